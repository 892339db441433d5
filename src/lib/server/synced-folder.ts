import { open } from 'node:fs/promises';

/**
 * Makes a file's name as durable as its bytes: after creating or renaming it, its folder is synced too.
 * Windows cannot open a folder for this; its file system keeps names in a journal of its own.
 */
export async function syncFolder(folder: string): Promise<void> {
	if (process.platform === 'win32') return;
	const handle = await open(folder, 'r');
	try {
		await handle.sync();
	} finally {
		await handle.close();
	}
}

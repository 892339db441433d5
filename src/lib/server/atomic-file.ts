import { open, rename } from 'node:fs/promises';
import { dirname } from 'node:path';
import { syncFolder } from './synced-folder';

/**
 * Replaces a whole file so that a power cut leaves either the old text or the new, never half. Readable by its
 * owner only. On disk when the promise resolves.
 */
export const replaceFile = async (path: string, text: string): Promise<void> => {
	const next = `${path}.next`;
	const handle = await open(next, 'w', 0o600);
	try {
		await handle.writeFile(text);
		await handle.sync();
	} finally {
		await handle.close();
	}
	await rename(next, path);
	await syncFolder(dirname(path));
};

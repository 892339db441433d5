import { randomBytes } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { replaceFile } from './atomic-file';
import { StartRefused } from './start-refused';

const KEY_BYTES = 32;

/**
 * The key that seals sign-in cookies; made at the first start.
 * @throws StartRefused when the file is there but does not hold a key
 */
export const openCookieKey = async (path: string): Promise<Buffer> => {
	try {
		const key = Buffer.from((await readFile(path, 'utf8')).trim(), 'base64');
		if (key.length !== KEY_BYTES)
			throw new StartRefused(
				`${path} does not hold a ${KEY_BYTES}-byte key. Delete it and a new one is made.`
			);
		return key;
	} catch (error) {
		if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
	}
	const key = randomBytes(KEY_BYTES);
	await replaceFile(path, key.toString('base64') + '\n');
	return key;
};

import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** Every file under a folder of the project, as paths from its root. */
export const filesUnder = (folder: string): string[] =>
	readdirSync(join(ROOT, folder), { recursive: true, withFileTypes: true })
		.filter((entry) => entry.isFile())
		.map((entry) => relative(ROOT, join(entry.parentPath, entry.name)));

export const textOf = (path: string): string => readFileSync(join(ROOT, path), 'utf8');

import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** The lessons as they lie on the disk: `content/30-handling` is the lesson `handling`. */
export const lessonSlugs = readdirSync(fileURLToPath(new URL('../../../content', import.meta.url)))
	.filter((folder) => /^\d+-/.test(folder))
	.map((folder) => folder.replace(/^\d+-/, ''));

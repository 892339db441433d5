import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const PAGES = fileURLToPath(new URL('../../../src/routes/[lang=lang]', import.meta.url));

/** Every route below the language that has a page, as it lies on the disk: `/people/[person]/sheet`. */
export const pageRoutes = (): string[] =>
	readdirSync(PAGES, { recursive: true, withFileTypes: true })
		.filter((entry) => entry.isFile() && entry.name === '+page.svelte')
		.map(({ parentPath }) => parentPath.slice(PAGES.length).replaceAll('\\', '/'))
		.sort();

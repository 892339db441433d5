import type { SectionPath, SectionPaths } from './section-paths';

/** Fills that differ in lightness too, so that a grey print still tells them apart. */
const FILLS: Record<SectionPath['what'], string> = {
	substrate: '#8b8d8f',
	film: '#2f5f6b',
	'top-coat': '#6fa3ad',
	void: '#f7f3ea',
	gap: '#f7f3ea',
	crack: '#f7f3ea',
	particle: '#2a1d12',
	gel: '#9cc7cf',
	rust: '#b5551d',
	haze: '#dfe8ea',
	grease: '#d9c66a',
	oxide: '#c4b48a',
	foreign: '#a33b3b'
};

/** The paths as the inside of an `svg` element of their own view box. */
export const sectionDrawing = ({ paths }: SectionPaths): string =>
	paths.map(({ what, d }) => `<path class="${what}" fill="${FILLS[what]}" d="${d}"/>`).join('');

/** The paths as a file. What it shows is told in words beside it. */
export const sectionSvg = (section: SectionPaths): string =>
	`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${section.view.join(' ')}" aria-hidden="true">` +
	`<rect width="100%" height="100%" fill="#f7f3ea"/>${sectionDrawing(section)}</svg>`;

import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import {
	cutSection,
	drawPicture,
	PICTURE_IDS,
	sectionDrawing,
	sectionPaths,
	SEVERITIES,
	type PictureRequest,
	type Raster
} from '../../src/lib/pictures';
import { png } from '../../src/lib/server/pictures/png';

/*
 * Draws every picture into tests/pictures/contact-sheets, to be looked at: rows are defects in the order of the
 * catalogue, columns severities 1 to 3, and the last row of the last sheet is sound film, matt to glossy.
 */

const SEED = 20;
const TILE = 180;
const GAP = 4;
/** Rows per sheet: keeps each file below 400 kB. */
const ROWS = 13;
/** Steps of brightness kept: sheets are for eyes, and fewer steps make smaller files. */
const STEP = 6;

const folder = new URL('./contact-sheets/', import.meta.url);
const save = (name: string, content: Uint8Array | string) => {
	writeFileSync(fileURLToPath(new URL(name, folder)), content);
	console.log(`${name}: ${Math.round(content.length / 1000)} kB`);
};

const rows: PictureRequest[][] = [
	...PICTURE_IDS.map((defect) => SEVERITIES.map((severity) => ({ defect, severity, seed: SEED }))),
	[0.1, 0.5, 0.9].map((gloss) => ({ defect: 'sound', severity: 1, seed: SEED, gloss }) as const)
];

function sheet(tiles: readonly (readonly Raster[])[]): Raster {
	const { width: tileWidth, height: tileHeight } = tiles[0]![0]!;
	const width = 3 * (tileWidth + GAP) + GAP;
	const height = tiles.length * (tileHeight + GAP) + GAP;
	const rgba = new Uint8ClampedArray(width * height * 4).fill(240);
	tiles.forEach((row, y) =>
		row.forEach((tile, x) => {
			for (let r = 0; r < tileHeight; r++) {
				const line = tile.rgba.subarray(r * tileWidth * 4, (r + 1) * tileWidth * 4);
				const at = ((GAP + y * (tileHeight + GAP) + r) * width + GAP + x * (tileWidth + GAP)) * 4;
				rgba.set(
					line.map((value) => Math.round(value / STEP) * STEP),
					at
				);
			}
		})
	);
	return { width, height, rgba };
}

for (const view of ['plain', 'raking', 'loupe'] as const) {
	for (let from = 0, n = 1; from < rows.length; from += ROWS, n++) {
		const tiles = rows
			.slice(from, from + ROWS)
			.map((row) => row.map((request) => drawPicture(request, view, TILE)));
		save(`${view}-${n}.png`, png(sheet(tiles)));
	}
}

for (let from = 0, n = 1; from < rows.length; from += ROWS, n++) {
	const drawings = rows.slice(from, from + ROWS).flatMap((row, y) => [
		`<text y="${y * 220 + 12}" font-size="12">${row[0]!.defect}</text>`,
		...row.map((request, x) => {
			const drawing = sectionDrawing(sectionPaths(cutSection(request)));
			return `<svg x="${x * 310}" y="${y * 220 + 16}" width="300" height="200" viewBox="0 0 300 200">${drawing}</svg>`;
		})
	]);
	save(
		`section-${n}.svg`,
		`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 930 ${ROWS * 220}">` +
			`<rect width="100%" height="100%" fill="#f7f3ea"/>${drawings.join('')}</svg>`
	);
}
const list = rows.map(
	([one], k) => `- sheet ${Math.floor(k / ROWS) + 1}, row ${(k % ROWS) + 1}: ${one!.defect}`
);
save('rows.md', `# What lies in which row\n\n${list.join('\n')}\n`);

import { expect, test } from 'vitest';
import { raking } from '../../../src/lib/pictures/shade/raking';
import { shade } from '../../../src/lib/pictures/shade/shade';
import { tone } from '../../../src/lib/pictures/shade/tone';
import type { Surface } from '../../../src/lib/pictures/surface';

/** The transfer curve of sRGB (IEC 61966-2-1, from memory). */
const srgb = (light: number) =>
	255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055);

test('light is encoded as sRGB, to a step of 255', () => {
	for (let light = 0.005; light <= 1; light += 0.001) {
		expect(Math.abs(tone(light) - srgb(light)), `at ${light}`).toBeLessThanOrEqual(1.5);
	}
	expect([tone(-1), tone(0), tone(1), tone(9)]).toEqual([0, 0, 255, 255]);
});

/** One wall, µm high, across a grey panel seen a tenth of a millimetre to the pixel. */
function wall(high: number): Surface {
	const frame = { width: 60, height: 3, left: 0, top: 0, pixel: 0.1 };
	const height = new Float32Array(180);
	for (let r = 0; r < 3; r++) height.fill(high, r * 60 + 20, r * 60 + 22);
	const colour = new Float32Array(540).fill(0.2);
	return {
		frame,
		seed: 1,
		focus: { x: 1, y: 1 },
		film: [0.2, 0.2, 0.2],
		height,
		colour,
		gloss: new Float32Array(180)
	};
}

test('under the raking lamp the near side flares and the far side lies in shadow', () => {
	const row = shade(wall(30), raking)
		.rgba.filter((_, k) => k % 4 === 0)
		.slice(60, 120);
	const flat = row[5]!;
	expect(row[19]).toBeGreaterThan(flat + 20);
	expect(row[24]).toBeLessThan(flat - 20);
	expect(row[58]).toBe(flat);
});

test('a shadow is as long as a lamp at 8° casts it, relief being drawn four times as steep', () => {
	const row = shade(wall(20), raking)
		.rgba.filter((_, k) => k % 4 === 0)
		.slice(60, 120);
	const dark = [...row].filter((value, k) => k > 21 && value < 10).length;
	const long = (4 * 0.02) / Math.tan((8 * Math.PI) / 180);
	expect(Math.abs(dark * 0.1 - long)).toBeLessThanOrEqual(0.1);
});

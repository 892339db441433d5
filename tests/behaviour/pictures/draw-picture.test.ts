import { describe, expect, test } from 'vitest';
import { DEFECTS } from '../../../src/lib/engine';
import {
	drawPicture,
	PICTURE_IDS,
	SEVERITIES,
	type PictureId,
	type Raster,
	type ShadedView
} from '../../../src/lib/pictures';

const SHADED: readonly ShadedView[] = ['plain', 'raking', 'loupe'];
const SEEDS = [3, 4];
const WIDTH = 120;

/** Here film creeps over bare metal: the more of it, the more the panel is like one coated all over. */
const CREEPING: readonly PictureId[] = ['mask-bleed'];

/** Mean difference of two pictures of one size, pixel by pixel, in steps of 255. */
const difference = (a: Raster, b: Raster) =>
	a.rgba.reduce((sum, value, k) => sum + Math.abs(value - b.rgba[k]!), 0) / a.rgba.length;

const fromSound = (defect: PictureId, severity: 1 | 2 | 3, view: ShadedView) =>
	SEEDS.reduce((sum, seed) => {
		const sound = drawPicture({ defect: 'sound', severity, seed }, view, WIDTH);
		return sum + difference(drawPicture({ defect, severity, seed }, view, WIDTH), sound);
	}, 0);

test('every defect of the catalogue has a picture', () => {
	expect(PICTURE_IDS).toEqual(Object.keys(DEFECTS));
});

describe.each(PICTURE_IDS)('%s', (defect) => {
	test('is drawn alike from the same seed and differently from another', () => {
		for (const view of SHADED) {
			const draw = (seed: number) => drawPicture({ defect, severity: 2, seed }, view, WIDTH).rgba;
			expect(draw(9)).toEqual(draw(9));
			expect(draw(9)).not.toEqual(draw(10));
		}
	});

	test('is further from a sound film the more severe it is', () => {
		const far = SEVERITIES.map(
			(severity) => fromSound(defect, severity, 'plain') + fromSound(defect, severity, 'raking')
		);
		expect(far[0]).toBeGreaterThan(0);
		const rising = far.toSorted((a, b) => a - b);
		expect(far).toEqual(CREEPING.includes(defect) ? rising.toReversed() : rising);
		expect(new Set(far).size).toBe(3);
	});

	test('has a specimen in the loupe', () => {
		for (const severity of SEVERITIES) expect(fromSound(defect, severity, 'loupe')).toBeGreaterThan(0);
	});
});

test('sound films of different gloss look different', () => {
	const sound = (gloss: number) =>
		drawPicture({ defect: 'sound', severity: 1, seed: 1, gloss }, 'plain', WIDTH);
	expect(difference(sound(0.1), sound(0.5))).toBeGreaterThan(2);
	expect(difference(sound(0.5), sound(0.9))).toBeGreaterThan(2);
});

test('a loupe draws finer detail: within what was one pixel there is more than one tone', () => {
	const { rgba, width, height } = drawPicture({ defect: 'dirt', severity: 2, seed: 3 }, 'loupe');
	let flat = 0;
	let blocks = 0;
	for (let y = 0; y + 8 <= height; y += 8) {
		for (let x = 0; x + 8 <= width; x += 8, blocks++) {
			const tones = new Set<number>();
			for (let k = 0; k < 64; k++) tones.add(rgba[((y + (k >> 3)) * width + x + (k & 7)) * 4]!);
			if (tones.size === 1) flat++;
		}
	}
	expect(flat / blocks).toBeLessThan(0.02);
});

test.each([47, 961, NaN])('a width of %s pixels is refused', (width) => {
	expect(() => drawPicture({ defect: 'sound', severity: 1, seed: 1 }, 'plain', width)).toThrow(RangeError);
});

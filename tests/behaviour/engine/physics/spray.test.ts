import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bellRipple } from '../../../../src/lib/engine/physics/spray/bell-ripple';
import { bestOverlap } from '../../../../src/lib/engine/physics/spray/best-overlap';
import { evenness } from '../../../../src/lib/engine/physics/spray/evenness';
import { faceFilm } from '../../../../src/lib/engine/physics/spray/face-film';
import { fanShape, fanShapeArea } from '../../../../src/lib/engine/physics/spray/fan-shape';
import { fanUniformity } from '../../../../src/lib/engine/physics/spray/fan-uniformity';
import { filmPerPass } from '../../../../src/lib/engine/physics/spray/film-per-pass';
import { strokeDeposit } from '../../../../src/lib/engine/physics/spray/stroke-deposit';
import { strokeFilm } from '../../../../src/lib/engine/physics/spray/stroke-film';
import { transferEfficiency } from '../../../../src/lib/engine/physics/spray/transfer-efficiency';
import {
	count,
	fraction,
	grams,
	metres,
	metresPerSecond,
	millimetres,
	percent
} from '../../../../src/lib/engine/units/construct';
import type { CubicMetrePerSecond, Kilogram } from '../../../../src/lib/engine/units/dimension';

const even = (overlap: number, beta = 2) =>
	fanUniformity.at({ overlap: fraction(overlap), beta: count(beta) });

const gun = {
	flow: (150e-6 / 60) as CubicMetrePerSecond,
	solids: percent(30),
	transfer: percent(60),
	speed: metresPerSecond(0.5)
};

/** Area under a curve from −reach to reach, by the midpoint rule. */
function under(curve: (x: number) => number, reach: number) {
	const steps = 4000;
	let sum = 0;
	for (let step = 0; step < steps; step++) sum += curve(reach * ((2 * step + 1) / steps - 1));
	return (sum * 2 * reach) / steps;
}

describe('transfer efficiency', () => {
	const of = (deposited: number) =>
		transferEfficiency.at({ deposited: grams(deposited), sprayed: grams(200), solids: percent(40) });

	it('is solids on the part over solids sprayed', () => {
		expect(of(50)).toBeCloseTo(0.625, 12);
		expect(of(0)).toBe(0);
		expect(of(80)).toBeCloseTo(1, 12);
		// 0.56 is more than 0.7 · 0.8 in the last digit
		const all = { deposited: grams(560), sprayed: grams(700), solids: percent(80) };
		expect(transferEfficiency.at(all)).toBe(1);
		const brim = (0.2 * 0.4 * (1 + 1e-9)) as Kilogram;
		expect(transferEfficiency.at({ deposited: brim, sprayed: grams(200), solids: percent(40) })).toBe(1);
	});

	it('cannot be more than all', () => {
		expect(() => of(81)).toThrow(/^transfer-efficiency: deposited = 0\.081 is more than the 0\.08/);
	});
});

describe('one stroke', () => {
	const deposit = () => strokeDeposit.at(gun);
	const width = millimetres(250);

	it('leaves the film of a pass when it is spread over the index', () => {
		expect(deposit() / 0.125).toBeCloseTo(filmPerPass.at({ ...gun, index: millimetres(125) }), 15);
		expect(deposit()).toBeCloseTo(0.9e-6, 12);
	});

	it.each([
		['parabola', (x: number) => strokeFilm.parabola.at({ deposit: deposit(), x: metres(x), width }), 0.125],
		[
			'β 1.5',
			(x: number) => strokeFilm.beta.at({ deposit: deposit(), x: metres(x), width, beta: count(1.5) }),
			0.125
		],
		[
			'β 4.3',
			(x: number) => strokeFilm.beta.at({ deposit: deposit(), x: metres(x), width, beta: count(4.3) }),
			0.125
		],
		[
			'bell',
			(x: number) => strokeFilm.bell.at({ deposit: deposit(), x: metres(x), sigma: millimetres(40) }),
			0.4
		]
	] as const)('keeps all of its coating as a %s, thickest in its middle', (_, film, reach) => {
		expect(under(film, reach) / deposit()).toBeCloseTo(1, 4);
		expect(film(0)).toBeGreaterThan(film(0.03));
		expect(film(0.03)).toBeCloseTo(film(-0.03), 15);
		expect(film(0.03)).toBeGreaterThan(film(0.06));
	});

	it('ends at the edge of its fan', () => {
		const at = (x: number) => strokeFilm.parabola.at({ deposit: deposit(), x: metres(x), width });
		expect(at(0.125)).toBe(0);
		expect(at(0.124)).toBeGreaterThan(0);
		expect(at(-0.2)).toBe(0);
		expect(at(0)).toBeCloseTo((1.5 * deposit()) / width, 15);
		const beta = { deposit: deposit(), x: metres(0.07), width, beta: count(2) };
		expect(strokeFilm.beta.at(beta)).toBeCloseTo(at(0.07), 12);
	});

	it('has the area of its shape', () => {
		expect(fanShapeArea(2)).toBeCloseTo(2 / 3, 12);
		expect(fanShapeArea(1.5)).toBeCloseTo(Math.PI / 4, 12);
		expect(fanShapeArea(3)).toBeCloseTo(8 / 15, 12);
		expect([fanShape(0, 3), fanShape(0.25, 3), fanShape(0.5, 3), fanShape(-0.5, 3)]).toEqual([
			1, 0.5625, 0, 0
		]);
	});
});

describe('evenness', () => {
	it('is mean, variance, share of scatter and share of swing', () => {
		expect(evenness([1, 3, 1, 3])).toEqual({ mean: 2, variance: 1, variation: 0.5, peakToPeak: 1 });
		expect(evenness([2, 2])).toEqual({ mean: 2, variance: 0, variation: 0, peakToPeak: 0 });
	});

	it('of a parabola at no overlap, a third and a half follows from its integrals', () => {
		expect(even(0)).toMatchObject({ mean: expect.closeTo(2 / 3, 5), variance: expect.closeTo(4 / 45, 5) });
		expect(even(0).peakToPeak).toBeCloseTo(1.5, 4);
		// two strokes meet: 2 − 4x² − 4(x − ½)² swings from 1 at the middle of a stroke to 1.5 between two
		expect(even(0.5)).toMatchObject({
			mean: expect.closeTo(4 / 3, 5),
			variance: expect.closeTo(1 / 45, 5),
			peakToPeak: expect.closeTo(0.375, 5)
		});
	});

	it.each([
		[0.25, 2, 0.085],
		[1 / 3, 2, 0.064],
		[0.6, 2, 0.02],
		[0.5, 3, 0.041],
		[0.5, 4, 0.059]
	])('at overlap %d and β %d scatters by %d of the mean', (overlap, beta, variation) => {
		expect(even(overlap, beta).variation).toBeCloseTo(variation, 3);
	});

	it('has a mean of the shape over the index, whatever the overlap', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 0, max: 0.9, noNaN: true }),
				fc.double({ min: 1.5, max: 6, noNaN: true }),
				(overlap, beta) => {
					expect((even(overlap, beta).mean * (1 - overlap)) / fanShapeArea(beta)).toBeCloseTo(1, 3);
				}
			),
			{ numRuns: 40 }
		);
	});
});

describe('best overlap', () => {
	const best = (beta: number, from: number, to: number) =>
		bestOverlap.at({ beta: count(beta), from: fraction(from), to: fraction(to) });

	it('is nowhere beaten, and comes with its evenness', () => {
		const { overlap, variation } = best(2, 0, 0.5);
		for (let other = 0; other <= 0.5; other += 0.007)
			expect(even(other).variation).toBeGreaterThanOrEqual(variation);
		expect(variation).toBe(even(overlap).variation);
		expect(overlap * 1000).toBeCloseTo(Math.round(overlap * 1000), 6);
	});

	it('keeps to its limits', () => {
		expect(best(2, 0.1, 0.2).overlap).toBeCloseTo(0.2, 12);
		expect(best(2, 0.4, 0.45).overlap).toBeCloseTo(0.4, 12);
		expect(best(2, 0.35, 0.35).overlap).toBe(0.35);
		expect(best(2, 0.123, 0.1234).overlap).toBeCloseTo(0.1234, 3);
	});

	it('refuses limits the wrong way round', () => {
		expect(() => best(2, 0.5, 0.4)).toThrow('best-overlap: from = 0.5 must not be above to = 0.4');
	});
});

describe('ripple of bells', () => {
	const ripple = (index: number, sigma = 40) =>
		bellRipple.at({ sigma: millimetres(sigma), index: millimetres(index) });

	it.each([1.5, 2, 2.5, 3, 4])('agrees with the strokes themselves at %d σ between them', (apart) => {
		const film = Array.from({ length: 400 }, (_, place) => {
			let sum = 0;
			for (let stroke = -20; stroke <= 20; stroke++)
				sum += Math.exp(-((apart * (place / 400 + stroke)) ** 2) / 2);
			return sum;
		});
		expect(ripple(40 * apart)).toBeCloseTo(evenness(film).peakToPeak, 3);
	});

	it('refuses strokes that hardly meet', () => {
		expect(ripple(160)).toBeGreaterThan(1);
		expect(() => ripple(161)).toThrow(/^bell-ripple: index = 0\.161 must be at most 4 sigma = 0\.16/);
	});
});

describe('film across a face', () => {
	const deposit = () => strokeDeposit.at(gun);
	const face = (given: { face: number; index?: number; strokes: number; beta?: number }) =>
		faceFilm.at({
			face: millimetres(given.face),
			fan: millimetres(250),
			index: millimetres(given.index ?? 125),
			strokes: count(given.strokes),
			deposit: deposit(),
			beta: count(given.beta ?? 2)
		});

	it('is one stroke where there is one', () => {
		const { film } = face({ face: 200, strokes: 1 });
		const at = (x: number) =>
			strokeFilm.parabola.at({ deposit: deposit(), x: metres(x), width: millimetres(250) });
		expect(film).toHaveLength(201);
		expect(film[0]).toBeCloseTo(at(-0.1), 15);
		expect(film[100]).toBeCloseTo(at(0), 15);
		expect(film[150]).toBeCloseTo(at(0.05), 15);
		expect(film[200]).toBeCloseTo(at(0.1), 15);
	});

	it('lies the same from both edges, with an even number of strokes too', () => {
		const { film } = face({ face: 500, strokes: 4 });
		expect(film.map((value) => value.toPrecision(9))).toEqual(
			[...film].reverse().map((value) => value.toPrecision(9))
		);
		// two strokes half an index either side of the middle
		expect(face({ face: 10, strokes: 2 }).film[100]).toBeCloseTo(
			2 * strokeFilm.parabola.at({ deposit: deposit(), x: metres(0.0625), width: millimetres(250) }),
			15
		);
	});

	it('is in its middle as even as endless strokes, with the film of a pass', () => {
		const middle = face({ face: 250, strokes: 9 });
		expect(middle.peakToPeak).toBeCloseTo(even(0.5).peakToPeak, 3);
		expect(middle.mean).toBeCloseTo(filmPerPass.at({ ...gun, index: millimetres(125) }), 7);
	});

	it('thins towards edges the strokes do not run over', () => {
		const { film } = face({ face: 625, strokes: 4 });
		expect(film[0]).toBe(0);
		expect(film[0]).toBeLessThan(film[20]!);
		expect(film[20]).toBeLessThan(film[100]!);
	});

	it('refuses half a stroke and strokes beside the face', () => {
		expect(() => face({ face: 100, strokes: 1.5 })).toThrow(
			'face-film: strokes = 1.5 must be a whole number'
		);
		expect(() => face({ face: 1, index: 600, strokes: 2 })).toThrow('face-film: no stroke reaches the face');
	});
});

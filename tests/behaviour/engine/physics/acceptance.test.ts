import { describe, expect, it } from 'vitest';
import { filmEightyTwenty } from '../../../../src/lib/engine/physics/readings/film-eighty-twenty';
import { judgeArea } from '../../../../src/lib/engine/physics/readings/judge-area';
import { samplingPlan } from '../../../../src/lib/engine/physics/readings/sampling-plan';
import { micrometres, mils, squareMetres } from '../../../../src/lib/engine/units/construct';
import type { Metre } from '../../../../src/lib/engine/units/dimension';

const spots = (...readings: number[][]) => readings.map((spot) => spot.map(mils));
const even = (value: number) => spots(...Array.from({ length: 5 }, () => [value, value, value]));
const area = (readings: ReturnType<typeof spots>, min = 0.8, max = 1.2) =>
	judgeArea.at({ readings, min: mils(min), max: mils(max) });

describe('judgeArea', () => {
	it('fails an area whose mean is below the window, and names the spot that is too low', () => {
		const readings = spots(
			[0.92, 1.05, 1.0],
			[1.1, 1.12, 1.06],
			[0.78, 0.8, 0.7],
			[1.02, 0.98, 1.0],
			[1.15, 1.18, 1.1]
		);
		const judged = area(readings, 1, 1.5);
		expect(judged.verdict).toBe('below');
		expect(judged.mean).toBeCloseTo(mils((0.99 + 3.28 / 3 + 0.76 + 1 + 3.43 / 3) / 5), 12);
		expect(judged.spots.map(({ verdict }) => verdict)).toEqual([
			'within',
			'within',
			'below',
			'within',
			'within'
		]);
		expect(judged.accepted).toBe(false);
	});

	it('fails one that is too thick on the whole, or in one spot', () => {
		expect(area(even(1.3))).toMatchObject({ verdict: 'above', accepted: false });
		const peak = area(spots([1.45, 1.45, 1.45], ...Array.from({ length: 4 }, () => [1, 1, 1])));
		expect(peak).toMatchObject({ verdict: 'within', accepted: false });
		expect(peak.spots[0]!.verdict).toBe('above');
	});

	it('accepts spots between 0.8 and 1.2 of the limits while the mean is inside', () => {
		const readings = spots([0.81, 0.81, 0.81], [1, 1, 1], [1.2, 1.2, 1.2], [1.43, 1.43, 1.43], [1, 1, 1]);
		expect(area(readings)).toMatchObject({ verdict: 'within', complete: true, accepted: true });
		const low = spots([0.63, 0.63, 0.63], [1, 1, 1], [1, 1, 1], [1.43, 1.43, 1.43], [1, 1, 1]);
		expect(area(low).accepted).toBe(false);
	});

	it('does not limit single readings', () => {
		expect(area(spots([0.5, 1.3, 1.2], ...Array.from({ length: 4 }, () => [1, 1, 1]))).accepted).toBe(true);
	});

	it('takes a mean and a spot exactly at its limit as inside', () => {
		expect(area(even(0.8)).accepted).toBe(true);
		expect(area(even(1.2)).accepted).toBe(true);
		const readings = spots([0.64, 0.64, 0.64], [1.44, 1.44, 1.44], [1, 1, 1], [1, 1, 1], [1, 1, 1]);
		expect(area(readings).accepted).toBe(true);
	});

	it('takes up rounding in the last bits and no more', () => {
		const window = { min: micrometres(20), max: micrometres(30) };
		const five = (film: number) => Array.from({ length: 5 }, () => [film, film, film] as Metre[]);
		expect(judgeArea.at({ readings: five(window.min - 1e-12), ...window }).accepted).toBe(true);
		expect(judgeArea.at({ readings: five(window.min - 2e-12), ...window }).accepted).toBe(false);
		expect(judgeArea.at({ readings: five(window.max + 1e-12), ...window }).accepted).toBe(true);
		expect(judgeArea.at({ readings: five(window.max + 2e-12), ...window }).accepted).toBe(false);
	});

	it('accepts nothing measured too little', () => {
		expect(area(even(1).slice(1))).toMatchObject({ complete: false, accepted: false });
		const one = even(1).map((spot, at) => (at === 2 ? spot.slice(1) : spot));
		expect(area(one)).toMatchObject({ complete: false, accepted: false });
		expect(() => area([])).toThrow('readings holds no values');
		expect(() => area([[], ...even(1)])).toThrow('readings holds no values');
	});

	it('takes a window of no width and refuses one the wrong way round', () => {
		expect(area(even(1), 1, 1).accepted).toBe(true);
		expect(() => area(even(1), 1.2, 0.8)).toThrow(/^judge-area: min = .* must not be above max/);
	});
});

describe('samplingPlan', () => {
	it.each([
		[1, 1],
		[100, 1],
		[101, 2],
		[250, 3],
		[300, 3],
		[301, 3],
		[1000, 3],
		[1001, 4],
		[2000, 4],
		[10_000, 12]
	])('measures %d ft² on %d areas', (squareFeet, areas) => {
		const plan = samplingPlan.at({ coated: squareMetres(squareFeet * 0.09290304) });
		expect(plan).toEqual({ areas, spots: areas * 5, readings: areas * 15 });
	});

	it('refuses a surface that is none', () => {
		expect(() => samplingPlan.at({ coated: squareMetres(0) })).toThrow('coated = 0 is outside');
	});
});

describe('the 80–20 rule', () => {
	const judge = (rule: 'fewer' | 'upTo', readings: number[], nominal = 100, most = 300) =>
		filmEightyTwenty[rule].at({
			readings: readings.map(micrometres),
			nominal: micrometres(nominal),
			most: micrometres(most)
		});
	const thick = (many: number) => Array.from({ length: many }, () => 120);

	it('says of each of its four conditions whether it holds', () => {
		expect(judge('fewer', [85, ...thick(9)])).toMatchObject({
			thinShare: 0.1,
			meanReached: true,
			noneTooThin: true,
			fewThin: true,
			noneTooThick: true,
			accepted: true
		});
		expect(judge('fewer', [79, ...thick(9)])).toMatchObject({ noneTooThin: false, accepted: false });
		expect(judge('fewer', [85, 85, 85, ...thick(7)])).toMatchObject({
			thinShare: 0.3,
			meanReached: true,
			noneTooThin: true,
			fewThin: false,
			noneTooThick: true,
			accepted: false
		});
		expect(judge('fewer', [301, ...thick(9)])).toMatchObject({ noneTooThick: false, accepted: false });
		expect(judge('fewer', [81, ...Array.from({ length: 9 }, () => 101)])).toMatchObject({
			meanReached: false,
			noneTooThin: true,
			fewThin: true,
			accepted: false
		});
	});

	it('works out the mean', () => {
		expect(judge('fewer', [95, 102, 110, 98, 88, 105, 120, 101, 99, 84])).toMatchObject({
			mean: expect.closeTo(100.2e-6, 12),
			thinShare: 0.5,
			meanReached: true,
			accepted: false
		});
	});

	it('comes in two readings of exactly one fifth', () => {
		const readings = [90, 90, ...thick(8)];
		expect(judge('fewer', readings)).toMatchObject({ thinShare: 0.2, fewThin: false, accepted: false });
		expect(judge('upTo', readings)).toMatchObject({ thinShare: 0.2, fewThin: true, accepted: true });
		expect(judge('upTo', [90, 90, 90, ...thick(7)]).accepted).toBe(false);
		expect(judge('upTo', [90, ...thick(9)]).accepted).toBe(true);
	});

	it('takes readings exactly at a limit as inside', () => {
		expect(judge('fewer', [80, ...thick(9)]).accepted).toBe(true);
		expect(judge('fewer', [300, ...thick(9)]).accepted).toBe(true);
		expect(
			judge(
				'fewer',
				Array.from({ length: 10 }, () => 100)
			)
		).toMatchObject({
			thinShare: 0,
			meanReached: true,
			accepted: true
		});
		expect(
			judge(
				'fewer',
				Array.from({ length: 10 }, () => 100),
				100,
				100
			).accepted
		).toBe(true);
	});

	it('takes up rounding in the last bits and no more', () => {
		const film = { nominal: micrometres(100), most: micrometres(120) };
		const of = (...readings: number[]) =>
			filmEightyTwenty.fewer.at({ readings: readings as Metre[], ...film });
		const ten = (one: number) => Array.from({ length: 10 }, () => one);
		expect(of(...ten(film.nominal - 1e-12))).toMatchObject({ thinShare: 0, meanReached: true });
		expect(of(...ten(film.nominal - 2e-12))).toMatchObject({ thinShare: 1, meanReached: false });
		expect(of(...ten(film.most + 1e-12)).noneTooThick).toBe(true);
		expect(of(...ten(film.most + 2e-12)).noneTooThick).toBe(false);
		expect(of(0.8 * film.nominal - 1e-12).noneTooThin).toBe(true);
		expect(of(0.8 * film.nominal - 2e-12).noneTooThin).toBe(false);
	});

	it('refuses a film thinner than the standard is written for, and says so', () => {
		expect(() => judge('fewer', [25, 26], 25)).toThrow(/^film-80-20: nominal = .* is outside .*analogy/);
		expect(() => judge('upTo', [25, 26], 39.9)).toThrow(/ISO 19840 leaves out/);
		expect(judge('fewer', [40, 45], 40).accepted).toBe(true);
		// any other refusal is not about that
		expect(() => judge('fewer', [NaN], 40)).toThrow(/readings = NaN is outside 0 to 0\.02 \(SI\)$/);
		expect(() => judge('fewer', [NaN], 50)).toThrow(/readings = NaN is outside 0 to 0\.02 \(SI\)$/);
		expect(() => judge('fewer', [50], 6000)).toThrow(/nominal = 0\.006 is outside .* \(SI\)$/);
	});

	it('refuses a maximum below the nominal film', () => {
		expect(() => judge('fewer', [100], 100, 90)).toThrow(/^film-80-20: nominal = .* must not be above most/);
	});
});

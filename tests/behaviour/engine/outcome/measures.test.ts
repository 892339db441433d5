import { describe, expect, test } from 'vitest';
import {
	celsius,
	fraction,
	micrometres,
	minutes,
	ovenOutcome,
	rightAnswers,
	solve,
	type Answers,
	type FieldId,
	type Job,
	type MeasureId,
	type Shop
} from '$lib/engine';
import { choice, job, part, quantity, shop } from '../rules/bench';

/** Sheet F: 32 % solids, 2 coats, film 15–25 µm, flash 15–30 min leaving 12 %, cure 145–155 °C for 60–72 min. */
function found(over: Answers, of: MeasureId, on: Job = job(), inForce: Shop = shop, asked?: FieldId[]) {
	const plan = solve(on, inForce);
	const { measures } = ovenOutcome(
		plan,
		asked ? over : { ...rightAnswers(plan), ...over },
		on,
		inForce,
		asked
	);
	const one = measures.find(({ id }) => id === of);
	if (!one) return undefined;
	const { degree, side } = one;
	return { number: one.kind === 'index' ? one.index : (one.value?.value ?? null), degree, side };
}
const about = (value: number) => expect.closeTo(value, 8);

describe('film built', () => {
	const film = (over: Answers) => found(over, 'film-built');
	const wet = (value: number) => ({ 'wet-film': quantity(micrometres(value)) });

	test('is wet film times solids times coats', () => {
		expect(film(wet(40))).toEqual({ number: about(25.6e-6), degree: 1, side: 'high' });
		expect(film({ coats: quantity(3) })).toEqual({ number: about(30e-6), degree: 2, side: 'high' });
		expect(film({ coats: quantity(1) })).toEqual({ number: about(10e-6), degree: 3, side: 'low' });
	});

	test('loses by thinner beyond what the sheet permits, not by less', () => {
		const share = (value: number) => film({ 'thinner-share': quantity(fraction(value)) })!.number;
		expect(share(0.3)).toBeCloseTo(20e-6 / 1.2, 10);
		expect(share(0)).toBeCloseTo(20e-6, 10);
	});

	test('has no number where the law does not hold, and is far out all the same', () => {
		expect(film(wet(5e6))).toEqual({ number: null, degree: 3, side: 'high' });
		expect(film(wet(-5))).toEqual({ number: null, degree: 3, side: 'low' });
		expect(film({ 'thinner-share': quantity(9) })).toEqual({ number: null, degree: 3, side: 'low' });
	});

	test('is left out where it was left empty, not where it was not asked', () => {
		const on = job();
		expect(found({}, 'film-built', on, shop, ['wet-film'])).toBeUndefined();
		expect(found({}, 'film-built', on, shop, ['flash-time'])?.degree).toBe(0);
	});
});

describe('solvent left', () => {
	const left = (time: number, more: Answers = {}, inForce = shop) =>
		found({ 'flash-time': quantity(minutes(time)), ...more }, 'solvent-left', job(), inForce)!;

	test('is all of it without a flash-off, what the sheet says after the shortest, and falls by equal parts', () => {
		expect(left(0).number).toBeCloseTo(0.68, 9);
		expect(left(15).number).toBeCloseTo(0.12, 9);
		expect(left(30).number).toBeCloseTo((0.12 * 0.12) / 0.68, 9);
		expect([left(0), left(13), left(15), left(600)].map(({ degree }) => degree)).toEqual([3, 1, 0, 0]);
	});

	test('is more in a film thinned too much', () => {
		const thinned = left(15, { 'thinner-share': quantity(fraction(0.6)) });
		expect(thinned.number).toBeCloseTo(((0.68 + 0.5) / 1.5) * (0.12 / 0.68), 9);
		expect(thinned).toMatchObject({ degree: 2, side: 'high' });
	});

	test('leans on the teaching model where the sheet is silent', () => {
		const sheet = shop.sheets['demo-f-catalysed']!;
		const lines = Object.fromEntries(Object.entries(sheet.lines).filter(([id]) => id !== 'solvent-share'));
		const silent = { ...shop, sheets: { [sheet.id]: { ...sheet, lines: lines as typeof sheet.lines } } };
		expect(left(15, {}, silent).number).toBeCloseTo(0.68 * 0.25, 9);
	});
});

describe('cure reached', () => {
	const cure = (temperature: number, hold: number, more: Answers = {}) =>
		found(
			{
				'cure-temperature': quantity(celsius(temperature)),
				'cure-hold': quantity(minutes(hold)),
				...more
			},
			'cure-reached'
		)!;

	test('at the middle of the window is the time held', () =>
		expect(cure(150, 66)).toEqual({ number: about(66 * 60), degree: 0, side: null }));

	test('follows Arrhenius inside the window and outside it', () => {
		// exp(67 000 / 8.314 462 618 · (1/423.15 − 1/T)), worked by hand
		expect(cure(155, 60).number! / 60).toBeCloseTo(60 * 1.2491, 1);
		expect(cure(100, 60).number! / 60).toBeCloseTo(60 * 0.07795, 2);
	});

	test('outside the window on one side is never made up for by the other', () => {
		expect(cure(140, 60 * 24).number).toBe(cure(140, 60).number);
		expect(cure(165, 1).number).toBe(cure(165, 72).number);
		expect(cure(155, 50).number).toBe(cure(145, 50).number);
		expect(cure(145, 90).number).toBe(cure(155, 90).number);
		expect(cure(141, 66)).toMatchObject({ degree: 1, side: 'low' });
		expect(cure(165, 66)).toMatchObject({ degree: 2, side: 'high' });
		expect(cure(150, 20)).toMatchObject({ degree: 3, side: 'low' });
	});

	test('loses the heat-up of the slowest part where the clock starts at the oven door', () => {
		const early = cure(150, 66, { 'clock-starts': choice('door') });
		expect(early.number).toBeLessThan(cure(150, 66).number!);
		expect(early).toMatchObject({ degree: 2, side: 'low' });
	});

	test('has no number hotter than the law holds for', () =>
		expect(cure(900, 66)).toEqual({ number: null, degree: 3, side: 'high' }));
});

test('a part heats to the hotter of what was set, and stands beside its own limit', () => {
	const heat = (over: Answers) => found(over, 'part-heat');
	expect(heat({ 'cure-temperature': quantity(celsius(205)) })).toEqual({
		number: about(celsius(205)),
		degree: 2,
		side: 'high'
	});
	const casting = job({
		parts: [part({ material: 'aluminium-casting', magnetSticks: false, porous: true })]
	});
	expect(found({}, 'part-heat', casting)).toEqual({ number: about(celsius(170)), degree: 0, side: null });
	expect(heat({ 'cure-temperature': quantity(celsius(216)) })).toMatchObject({ degree: 3 });
	expect(heat({ 'cure-temperature': quantity(celsius(200)) })).toMatchObject({ degree: 0 });
});

describe('wetness', () => {
	const far = { 'gun-distance': quantity(0.9) };
	const thin = { 'cup-time': quantity(5) };

	test('is dry from afar, wet when thin, and the two can cancel', () => {
		expect(found(far, 'wetness')).toEqual({ number: -1, degree: 3, side: 'low' });
		expect(found(thin, 'wetness')).toEqual({ number: 1, degree: 3, side: 'high' });
		expect(found({ ...far, ...thin }, 'wetness')).toEqual({ number: 0, degree: 0, side: null });
	});

	test('takes the worse of two rules that one answer breaks', () =>
		expect(found({ 'cap-pressure': quantity(0.76e5) }, 'wetness')).toMatchObject({ number: -1, degree: 3 }));

	test('follows the air of a day on which nobody should have sprayed', () => {
		const day = (air: number) => job({ weather: { air: celsius(air) } });
		const go = { 'spray-go': choice('go') };
		expect(found(go, 'wetness', day(15))).toMatchObject({ degree: 2, side: 'high' });
		expect(found(go, 'wetness', day(31))).toMatchObject({ degree: 2, side: 'low' });
		expect(found({}, 'wetness', day(31))).toMatchObject({ degree: 0 });
	});
});

test('the key is shallow under low pressure or from afar, deep under high pressure or close up', () => {
	const key = (over: Answers) => found(over, 'key')!.side;
	expect(key({ 'blast-pressure': quantity(1e4) })).toBe('low');
	expect(key({ 'blast-pressure': quantity(9e5) })).toBe('high');
	expect(key({ 'blast-standoff': quantity(2) })).toBe('low');
	expect(key({ 'blast-standoff': quantity(0.01) })).toBe('high');
	expect(key({ 'blast-media': choice('scuff') })).toBe('low');
});

test('gloss and adhesion fall with every defect that takes from them', () => {
	const soft = { 'cure-hold': quantity(minutes(55)) };
	const dry = { 'gun-distance': quantity(0.9) };
	expect(found(soft, 'gloss')).toMatchObject({ number: about(0.85 * 0.85), degree: 1 });
	expect(found(soft, 'adhesion')).toMatchObject({ number: about(0.85), degree: 1 });
	expect(found({ ...soft, ...dry }, 'gloss')!.number).toBeCloseTo(0.85 * 0.85 * 0.3 * 0.3, 9);
	expect(found(dry, 'adhesion')).toMatchObject({ number: 1, degree: 0 });
});

test('nothing is measured of a job that may not start', () => {
	const unknown = { ...job(), parts: [{ ...job().parts[0]!, material: 'unknown' as const }] };
	const plan = solve(unknown, shop);
	expect(plan.decision).not.toBe('accept');
	const outcome = ovenOutcome(plan, { ...rightAnswers(plan), decision: choice('accept') }, unknown, shop);
	expect(outcome.measures).toEqual([]);
	expect(outcome.harm).toContain('material-known');
	expect(outcome.defects.map(({ defect }) => defect)).toContain('distorted-part');
});

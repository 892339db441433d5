import { describe, expect, test } from 'vitest';
import {
	beyondReach,
	filmMap,
	GUN_CONTROLS,
	metresPerSecond,
	micrometres,
	millilitresPerMinute,
	millimetres,
	count,
	percent,
	rightAnswers,
	solve,
	type FilmMap,
	type GunSettings,
	type Job
} from '$lib/engine';
import { layCoat } from '../../../../src/lib/engine/outcome/film-map/coat';
import { given } from '../../../../src/lib/engine/plan/trace';
import { job, shop } from '../rules/bench';

/** Sheet F: 32 % solids, 2 coats, film 15–25 µm, gun 75–150 mm; the shop's transfer is 65 %. */
const ordinary: GunSettings = {
	'gun-distance': millimetres(100),
	'fan-width': millimetres(110),
	overlap: percent(50),
	'gun-speed': metresPerSecond(0.3),
	coats: count(2),
	flow: millilitresPerMinute(50)
};
const lay = (over: Partial<GunSettings> = {}, on: Job = job()): FilmMap =>
	filmMap({ ...ordinary, ...over }, { plan: solve(on, shop), job: on, shop })!;

/** Dry coating of one stroke per metre, by hand: flow · solids · transfer over speed. */
const section = ({ flow, 'gun-speed': speed }: GunSettings) => (flow * 0.32 * 0.65) / speed;

/**
 * Film summed stroke by stroke over a panel of 150 mm, from a fan (1 − (2x/w)²)², whose area per width is 8/15. As many
 * strokes as take their middles from edge to edge, evenly about the middle of the panel.
 */
function bruteForce(set: GunSettings, laid: number): number[] {
	const index = set['fan-width'] * (1 - set.overlap);
	const strokes = 1 + Math.ceil(0.15 / index);
	return Array.from({ length: 201 }, (_, place) => {
		const x = (0.15 * place) / 200;
		let film = 0;
		for (let stroke = 0; stroke < strokes; stroke++) {
			const middle = 0.075 + (stroke - (strokes - 1) / 2) * index;
			const off = (2 * (x - middle)) / laid;
			if (Math.abs(off) < 1) film += (section(set) / ((8 / 15) * laid)) * (1 - off * off) ** 2;
		}
		return film * set.coats;
	});
}

describe('the film map', () => {
	test.each<[string, Partial<GunSettings>, number]>([
		['ordinary', {}, 0.11],
		['narrow and fast', { 'fan-width': millimetres(40), 'gun-speed': metresPerSecond(0.8) }, 0.04],
		['no overlap', { overlap: percent(0) }, 0.11],
		['much overlap, three coats', { overlap: percent(80), coats: count(3) }, 0.11],
		['nearer than allowed, so the fan closes', { 'gun-distance': millimetres(60) }, 0.11 * (60 / 75)],
		['farther than allowed, so the fan opens', { 'gun-distance': millimetres(225) }, 0.11 * 1.5]
	])('is the sum of its strokes: %s', (_, over, laid) => {
		const map = lay(over);
		const byHand = bruteForce({ ...ordinary, ...over }, laid);
		byHand.forEach((film, place) => expect(map.film[place]).toBeCloseTo(film, 12));
		expect(map.lowest).toBeCloseTo(Math.min(...byHand), 12);
		expect(map.highest).toBeCloseTo(Math.max(...byHand), 12);
		expect(map.unevenness * map.mean.value).toBeCloseTo(map.highest - map.lowest, 12);
	});

	test('holds what was sprayed and arrived: of strokes on both edges, half of each', () => {
		const said = { en: 'set', es: 'ajuste' };
		const { film, strokes } = layCoat({
			fan: given('length', millimetres(150), said),
			laid: given('length', millimetres(75), said),
			overlap: given('fraction', percent(0), said),
			speed: given('speed', ordinary['gun-speed'], said),
			flow: given('flow', ordinary.flow, said),
			solids: given('fraction', percent(32), said),
			transfer: given('fraction', percent(65), said)
		});
		expect(strokes.value).toBe(2);
		const inside = film.slice(1, -1).reduce<number>((sum, one) => sum + one, 0);
		const held = ((film[0]! + film.at(-1)!) / 2 + inside) * (0.15 / 200);
		expect(held / section(ordinary)).toBeCloseTo(1, 4);
	});

	test('holds in its middle what a pass spreads over the distance between strokes', () => {
		const narrow = { 'fan-width': millimetres(30), overlap: percent(50) };
		const { film } = lay(narrow);
		// four whole distances of 15 mm, away from the edges
		const middle = film.slice(60, 140);
		const mean = middle.reduce<number>((sum, one) => sum + one, 0) / middle.length;
		expect(mean / ((2 * section(ordinary)) / 0.015)).toBeCloseTo(1, 6);
	});

	test('takes the middle of a stroke to both edges of the panel, or past them', () => {
		for (const overlap of [0, 30, 50, 70]) {
			const { strokes, index } = lay({ overlap: percent(overlap) });
			expect((strokes.value - 1) * index.value).toBeGreaterThanOrEqual(0.15 - 1e-12);
			expect((strokes.value - 2) * index.value).toBeLessThan(0.15);
		}
	});

	test('halves where the gun goes twice as fast, doubles with the flow and with the coats', () => {
		const { film } = lay();
		const times = (over: Partial<GunSettings>, factor: number) =>
			lay(over).film.forEach((one, place) => expect(one / film[place]!).toBeCloseTo(factor, 9));
		times({ 'gun-speed': metresPerSecond(0.6) }, 0.5);
		times({ flow: millilitresPerMinute(100) }, 2);
		times({ coats: count(4) }, 2);
	});

	test('grows with the overlap, and falls into bands without it', () => {
		const mean = (overlap: number) => lay({ overlap: percent(overlap) }).mean.value;
		expect(mean(60)).toBeGreaterThan(mean(50));
		expect(mean(50)).toBeGreaterThan(mean(40));
		const uneven = (overlap: number) => lay({ overlap: percent(overlap) }).unevenness;
		expect(uneven(0)).toBeGreaterThan(3 * uneven(50));
		expect(uneven(20)).toBeGreaterThan(2 * uneven(50));
	});

	test('is even enough wherever the overlap is right, and not far below that', () => {
		for (let overlap = 40; overlap <= 60; overlap += 5) {
			const flow = (film: number) => film / lay({ overlap: percent(overlap) }).mean.value;
			const right = millilitresPerMinute(50 * flow(micrometres(20)));
			expect(lay({ overlap: percent(overlap), flow: right }).verdict).toBe('accepted');
		}
		const sparse = lay({ overlap: percent(20) }).mean.value;
		const flow = millilitresPerMinute((50 * micrometres(20)) / sparse);
		expect(lay({ overlap: percent(20), flow }).verdict).toBe('uneven');
	});

	test('keeps the fan as it was set at every distance the job allows', () => {
		const film = (distance: number) => lay({ 'gun-distance': millimetres(distance) }).film;
		expect(film(75)).toEqual(film(150));
		expect(film(160)).not.toEqual(film(150));
	});

	test('tells wet film of one coat: what the dry one was before its solvent left', () => {
		const map = lay();
		expect(map.wet.value * 0.32 * 2).toBeCloseTo(map.mean.value, 12);
	});
});

describe('what is accepted', () => {
	const at = (film: number, drawn: Job['film'] = null) => {
		const flow = (50 * micrometres(film)) / lay().mean.value;
		return lay({ flow: millilitresPerMinute(flow) }, job({ film: drawn }));
	};

	test('is an average inside the wanted film with every place inside 0.8 and 1.2 of its limits', () => {
		expect(at(20).verdict).toBe('accepted');
		expect(at(14.9).verdict).toBe('thin');
		expect(at(25.1).verdict).toBe('thick');
		expect(at(14.9).places).not.toContain('too-thick');
		for (const map of [at(10), at(20), at(24), lay({ overlap: percent(10) })])
			map.film.forEach((film, place) => {
				const found =
					film < 12e-6
						? 'too-thin'
						: film < 15e-6
							? 'thin'
							: film > 30e-6
								? 'too-thick'
								: film > 25e-6
									? 'thick'
									: 'inside';
				expect(map.places[place]).toBe(found);
			});
	});

	test('follows the drawing where the job has one', () => {
		const film = { min: micrometres(16), max: micrometres(18), basis: 'per-side' } as const;
		const map = lay({}, job({ film }));
		expect([map.wanted.min.value, map.wanted.max.value]).toEqual([film.min, film.max]);
		expect(at(17, film).verdict).toBe('accepted');
		expect(at(19, film).verdict).toBe('thick');
	});
});

describe('how the drops land', () => {
	const landing = (over: Partial<GunSettings>) => lay(over).landing;

	test('is as wanted where the plan’s own distance and speed are set', () => {
		const right = rightAnswers(solve(job(), shop));
		const of = (id: 'gun-distance' | 'gun-speed') => {
			const answer = right[id];
			if (answer?.kind !== 'quantity') throw new Error(`${id} is no quantity`);
			return answer.value as never;
		};
		expect(landing({ 'gun-distance': of('gun-distance'), 'gun-speed': of('gun-speed') }).degree).toBe(0);
	});

	test('is dry from afar and at speed, wet close up', () => {
		expect(landing({ 'gun-distance': millimetres(250) }).side).toBe('low');
		expect(landing({ 'gun-speed': metresPerSecond(0.9) }).side).toBe('low');
		expect(landing({ 'gun-distance': millimetres(50) }).side).toBe('high');
	});
});

describe('the reach of the bench', () => {
	test('is refused beyond, by name', () => {
		expect(beyondReach(ordinary)).toBeUndefined();
		expect(beyondReach({ ...ordinary, 'fan-width': millimetres(201) })).toBe('fan-width');
		expect(beyondReach({ ...ordinary, flow: Number.NaN as never })).toBe('flow');
		expect(() => lay({ coats: count(7) })).toThrow(/^film-map: coats = 7 is beyond/);
	});

	test('lays some film in every corner of it', () => {
		const ids = Object.keys(GUN_CONTROLS) as (keyof GunSettings)[];
		for (let corner = 0; corner < 2 ** ids.length; corner++) {
			const set = Object.fromEntries(
				ids.map((id, bit) => [id, corner & (1 << bit) ? GUN_CONTROLS[id].most : GUN_CONTROLS[id].least])
			);
			const map = lay(set as unknown as GunSettings);
			expect(map.highest).toBeGreaterThan(0);
			expect(Number.isFinite(map.unevenness)).toBe(true);
		}
	});

	test('needs a film to compare with', () => {
		const on = job({ film: { min: micrometres(5), max: micrometres(8), basis: 'unstated' } as never });
		const plan = solve(job(), shop);
		expect(filmMap(ordinary, { plan, job: on, shop })).toBeUndefined();
		expect(filmMap(ordinary, { plan: { ...plan, fields: [] }, job: job(), shop })).toBeUndefined();
	});
});

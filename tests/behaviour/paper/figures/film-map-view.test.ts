import { describe, expect, test } from 'vitest';
import { makePracticeDrill, type PracticeDrill } from '$lib/drills';
import {
	beyondReach,
	filmMap,
	GUN_CONTROL_IDS,
	METRIC,
	rightAnswers,
	US,
	windowOf,
	type GunControlId,
	type GunSettings
} from '$lib/engine';
import { filmMapView, gunControlsView, gunInSheet, readGun, type Reader } from '$lib/paper';
import { demoShop } from '../../drills/shop';

const shop = demoShop();
const readers: readonly Reader[] = [
	{ lang: 'en', units: US },
	{ lang: 'en', units: METRIC },
	{ lang: 'es', units: US },
	{ lang: 'es', units: METRIC }
];
const drills = Array.from({ length: 20 }, (_, seed) =>
	makePracticeDrill({ seed, breadth: 2, shop, part: 'plan-the-passes' })
).filter((drill) => drill !== undefined);

const textsOf = (controls: ReturnType<typeof gunControlsView>) =>
	new Map<string, string>(controls.map(({ id, value, unit }) => [id, `${value} ${unit}`]));

/** The drill’s own right settings, with a flow. */
function rightGun({ plan }: PracticeDrill, flow: number): GunSettings {
	const right = rightAnswers(plan);
	const of = (id: Exclude<GunControlId, 'flow'>) => {
		const answer = right[id];
		return answer?.kind === 'quantity' ? answer.value : 1;
	};
	const set = Object.fromEntries(GUN_CONTROL_IDS.map((id) => [id, id === 'flow' ? flow : of(id)]));
	return set as unknown as GunSettings;
}

describe('the controls of the gun bench', () => {
	test('are found for every drill', () => expect(drills).toHaveLength(20));

	test.each(readers)('read back as they stand, and can go to their ends ($lang, $units.system)', (reader) => {
		for (const { plan } of drills) {
			const controls = gunControlsView({}, plan, reader);
			for (const end of ['min', 'max', 'value'] as const) {
				const read = readGun(
					(id) => textsOf(controls.map((one) => ({ ...one, value: one[end] }))).get(id) ?? null,
					reader
				);
				expect(read).toMatchObject({ ok: true });
			}
			for (const { min, max, step, value } of controls) {
				expect(Math.abs((value - min) / step - Math.round((value - min) / step))).toBeLessThan(1e-6);
				expect((max - min) / step).toBeLessThanOrEqual(100 + 1e-6);
			}
		}
	});

	test('do not start at an answer', () => {
		for (const { plan, job } of drills) {
			const controls = gunControlsView({}, plan, readers[1]!);
			const read = readGun((id) => textsOf(controls).get(id)!, readers[1]!);
			if (!read.ok) throw new Error(read.problem);
			for (const { field, demands } of plan.fields)
				if (field in read.settings) {
					const { min, max } = windowOf(demands);
					const start = read.settings[field as GunControlId];
					expect(start < min || start > max, `${field} ${start}`).toBe(true);
				}
			expect(filmMap(read.settings, { plan, job, shop })!.landing.degree).toBeGreaterThan(0);
		}
	});

	test('stand where the sheet says they do', () => {
		const { plan } = drills[0]!;
		const controls = gunControlsView({ 'gun-distance': 0.12, overlap: 0.5, flow: 1e-6 }, plan, readers[1]!);
		const at = (id: string) => controls.find((one) => one.id === id)!.value;
		expect([at('gun-distance'), at('overlap'), at('flow')]).toEqual([120, 50, 60]);
	});

	test('reach the right settings, and a flow that makes them right', () => {
		for (const drill of drills) {
			const flows = Array.from({ length: 59 }, (_, step) => (10 + 5 * step) / 6e7);
			const verdicts = flows.map((flow) => {
				const settings = rightGun(drill, flow);
				expect(beyondReach(settings)).toBeUndefined();
				return filmMap(settings, { ...drill, shop })!.verdict;
			});
			expect(verdicts).toContain('accepted');
			expect(verdicts).toContain('thick');
		}
	});
});

describe('what is typed', () => {
	const typed: Readonly<Record<GunControlId, string>> = {
		'gun-distance': '8 in',
		'fan-width': '100 mm',
		overlap: '50 %',
		'gun-speed': '60 ft/min',
		coats: '2',
		flow: '120 mL/min'
	};
	const read = (over: Partial<Record<GunControlId, string>>, reader = readers[0]!) =>
		readGun((id) => ({ ...typed, ...over })[id], reader);

	test('is read in any unit of its kind', () => {
		expect(read({})).toMatchObject({
			ok: true,
			settings: { 'gun-distance': 0.2032, 'fan-width': 0.1, overlap: 0.5, coats: 2, flow: 2e-6 }
		});
	});

	test.each<[GunControlId, string]>([
		['gun-distance', '8 psi'],
		['fan-width', '100'],
		['overlap', ''],
		['gun-speed', 'fast'],
		['coats', '1.5'],
		['flow', '120 mL']
	])('is refused by name: %s as “%s”', (control, text) => {
		const refused = read({ [control]: text });
		expect(refused).toMatchObject({ ok: false, control });
		if (!refused.ok) expect(refused.problem.length).toBeGreaterThan(20);
	});

	test('is refused beyond the bench, with its reach in the reader’s units', () => {
		expect(read({ 'gun-distance': '2 m' }, readers[3]!)).toEqual({
			ok: false,
			control: 'gun-distance',
			problem: 'De la pistola al panel: este banco abarca 50–300\u00a0mm.'
		});
	});
});

describe('the sheet', () => {
	const of = (value: number) => ({ answer: { kind: 'quantity', value, typed: '' } }) as never;
	const whole = {
		'gun-distance': of(0.1),
		'fan-width': of(0.1),
		overlap: of(0.5),
		'gun-speed': of(0.3),
		coats: of(2)
	};

	test('is a gun once every number is in, with the flow of the bench', () => {
		expect(gunInSheet(whole, null, readers[0]!).read).toMatchObject({ ok: true, settings: { overlap: 0.5 } });
		expect(gunInSheet(whole, '60 mL/min', readers[0]!).read).toMatchObject({
			ok: true,
			settings: { flow: 1e-6 }
		});
		expect(gunInSheet({ ...whole, coats: {} }, null, readers[0]!).read).toBeUndefined();
		expect(gunInSheet(whole, '60', readers[0]!).read).toMatchObject({ ok: false, control: 'flow' });
		expect(gunInSheet({ ...whole, coats: of(9) }, null, readers[0]!).read).toMatchObject({
			ok: false,
			control: 'coats'
		});
	});
});

describe('the view', () => {
	const { plan, job } = drills[0]!;
	const map = filmMap(rightGun(drills[0]!, 1e-6), { plan, job, shop })!;

	test.each(readers)('covers the panel in bands without a gap ($lang, $units.system)', (reader) => {
		const view = filmMapView(map, reader);
		expect(view.bands[0]!.from).toBe(0);
		expect(view.bands.at(-1)!.to).toBe(1);
		view.bands.slice(1).forEach(({ from }, at) => expect(from).toBe(view.bands[at]!.to));
		expect(view.curve).toHaveLength(map.film.length);
		expect(Math.max(...view.curve, ...view.wanted)).toBeLessThanOrEqual(1);
		expect(view.strokes).toHaveLength(map.strokes.value);
		expect(view.readings[0]!.at).toMatch(/^0/);
		expect(view.numbers.map(({ label }) => label).every(Boolean)).toBe(true);
		expect(JSON.parse(JSON.stringify(view))).toEqual(view);
	});

	test('is in the reader’s units', () => {
		const mean = (reader: Reader) => filmMapView(map, reader).numbers.find(({ id }) => id === 'mean')!.value;
		expect(mean(readers[0]!)).toContain('mil');
		expect(mean(readers[3]!)).toContain('µm');
	});
});

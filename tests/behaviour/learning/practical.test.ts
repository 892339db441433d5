import { describe, expect, it } from 'vitest';
import { DEMO_SHEETS, type DataSheet, type Shop } from '$lib/engine';
import {
	competencies,
	practicalEntries,
	practicalGateNamed,
	practicalPlan,
	practicalReadingNamed
} from '$lib/learning';

const shop: Shop = {
	on: '2026-03-02',
	sheets: Object.fromEntries(DEMO_SHEETS.map((sheet) => [sheet.id, sheet])),
	settings: {}
};
const sheetOf = (family: string): DataSheet => DEMO_SHEETS.find((sheet) => sheet.family === family)!;
const plan = (competency: Parameters<typeof practicalPlan>[0], family = 'A') =>
	practicalPlan(competency, { shop, sheet: sheetOf(family) });
const held = (competency: Parameters<typeof practicalPlan>[0], id: string, family = 'A') =>
	plan(competency, family).readings.find((reading) => reading.id === id)?.held;

describe.each(competencies)('the practical of $id', ({ id }) => {
	it('has gates and readings, each with words for the record', () => {
		const { gates, readings } = plan(id);
		expect(gates.length).toBeGreaterThan(1);
		expect(readings.length).toBeGreaterThan(0);
		for (const gate of gates) expect(practicalGateNamed(gate.id)).toBe(gate.label);
		for (const reading of readings)
			for (const { reading: recorded } of practicalEntries(
				reading,
				reading.places.map(() => [1])
			))
				expect(practicalReadingNamed(recorded), recorded).toBeDefined();
	});
});

describe('limits', () => {
	it('come from the sheet of the coating on the panels', () => {
		expect(held('spraying', 'film', 'A')).toMatchObject({ least: 25e-6, most: 40e-6 });
		expect(held('curing', 'hold-time', 'A')).toMatchObject({ least: 45 * 60, most: 54 * 60 });
		expect(held('inspection', 'cross-cut', 'A')).toMatchObject({ least: null, most: 1 });
		expect(held('inspection', 'rubs', 'A')).toMatchObject({ least: 75, most: null });
	});

	it('follow the shop where it has set a value', () => {
		const settings = { 'spray.dew-point-margin': { from: '2026-01-01', value: 4 } };
		const own = practicalPlan('spraying', { shop: { ...shop, settings }, sheet: sheetOf('A') });
		expect(own.readings.find(({ id }) => id === 'dew-margin')?.held).toMatchObject({
			least: 4,
			provenance: { origin: 'shop' }
		});
	});

	it('take the tighter of the sheet’s band and the shop’s tolerance for the mix', () => {
		const { least, most } = held('mixing', 'mix-ratio', 'A')!;
		// 4:1, band 3.9 to 4.1, hardener off by 3 % at most: 3.883 to 4.124
		expect([least, most]).toEqual([3.9, 4.1]);
	});

	it('ask nothing that neither sheet nor shop states', () => {
		expect(held('mixing', 'mix-ratio', 'E')).toBeUndefined();
		expect(held('curing', 'hold-time', 'E')).toBeUndefined();
	});
});

it('counts the labelled cup as a safety gate only with isocyanate', () => {
	const critical = (family: string) => plan('mixing', family).gates.find(({ id }) => id === 'G4')?.critical;
	expect([critical('A'), critical('B')]).toEqual([true, false]);
});

it('averages the film spot by spot and keeps what was read', () => {
	const film = plan('spraying').readings.find(({ id }) => id === 'film')!;
	const [raw, spots, mean] = practicalEntries(film, [
		[20e-6, 22e-6, 24e-6],
		[38e-6, 40e-6, 42e-6]
	]);
	expect(raw?.values).toEqual([20e-6, 22e-6, 24e-6, 38e-6, 40e-6, 42e-6]);
	expect(spots?.values).toEqual([22e-6, 40e-6]);
	expect(mean?.values).toEqual([31e-6]);
});

import { describe, expect, it } from 'vitest';
import { linesOn, statedValue, statedWindow } from '../../../../src/lib/engine/coatings/in-force';
import type { DataSheet, SheetLine } from '../../../../src/lib/engine/coatings/sheet';
import { DEMO_SHEETS } from '../../../../src/lib/engine/coatings/sheets';
import { job, shop } from '../rules/bench';
import { sheetWindow, situation } from '../../../../src/lib/engine/plan/situation';
import { celsius, minutes } from '../../../../src/lib/engine/units/construct';

const demo = DEMO_SHEETS.find(({ id }) => id === 'demo-f-catalysed') as DataSheet;
const flash = (from: string, min: number, max: number, unit = 'min') =>
	({ ...demo.lines.flash![0]!, from, unit, min, max }) as SheetLine;

/** Flash of 15 to 30 min, of half an hour to an hour from June on, entered out of order. */
const revised: DataSheet = {
	...demo,
	lines: { ...demo.lines, flash: [flash('2026-06-01', 0.5, 1, 'h'), flash('2026-01-01', 15, 30)] }
};
const flashOn = (on: string) => {
	const window = statedWindow(revised, 'flash', on);
	return window && [window.min.value, window.max.value];
};

describe('what a sheet states on a day', () => {
	it('is the newest entry that has started, in SI', () => {
		expect(flashOn('2026-01-01')).toEqual([minutes(15), minutes(30)]);
		expect(flashOn('2026-05-31')).toEqual([minutes(15), minutes(30)]);
		expect(flashOn('2026-06-01')).toEqual([minutes(30), minutes(60)]);
		expect(flashOn('2030-01-01')).toEqual([minutes(30), minutes(60)]);
	});

	it('is nothing before its first day, nor on lines it does not have', () => {
		expect(flashOn('2025-12-31')).toBeUndefined();
		const silent = { ...demo, lines: { ...demo.lines, 'fume-above': undefined as never } };
		expect(statedValue(silent, 'fume-above', '2026-11-25')).toBeUndefined();
	});

	it('says which sheet and line it was read from', () => {
		expect(statedValue(demo, 'fume-above', '2026-11-25')).toMatchObject({
			value: celsius(260),
			dimension: 'temperature',
			origin: { kind: 'sheet', sheet: demo.id, path: 'fume-above' },
			inputs: {}
		});
	});

	it('is read once, and again for another sheet of the same lines', () => {
		const read = () => linesOn(revised, '2026-07-01')('flash');
		expect(read()).toBe(read());
		const renamed = { ...revised, id: 'renamed' };
		expect(linesOn(renamed, '2026-07-01')('flash')).toMatchObject({ min: { origin: { sheet: 'renamed' } } });
	});

	it('is what a job of that day goes by', () => {
		const seen = (on: string) =>
			situation(job({ on }), { ...shop, sheets: { ...shop.sheets, [demo.id]: revised } })!;
		expect(sheetWindow(seen('2026-05-31'), 'flash')?.max.value).toBe(minutes(30));
		expect(sheetWindow(seen('2026-06-01'), 'flash')?.max.value).toBe(minutes(60));
	});
});

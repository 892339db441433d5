import { describe, expect, test } from 'vitest';
import { statedValue, statedWindow } from '../../../../src/lib/engine/coatings/in-force';
import { DEMO_SHEETS } from '../../../../src/lib/engine/coatings/sheets';
import { FAMILIES, type Family } from '../../../../src/lib/engine/coatings/traits';
import { validateSheet } from '../../../../src/lib/engine/coatings/validate';
import { celsius, hours, micrometres, minutes, percent } from '../../../../src/lib/engine/units/construct';

const DAY = '2026-11-25';

/** What the trade expects of each family: film, flash, cure of the hottest class the sheet names, pot life at 21 °C. */
const TRADE: Record<
	Family,
	{
		film: [number, number];
		flash: [number, number] | null;
		cure: [number, number] | null;
		potLife: [number, number] | null;
	}
> = {
	A: { film: [20, 40], flash: [10, 20], cure: [60, 80], potLife: [1, 4] },
	B: { film: [15, 40], flash: [10, 20], cure: [80, 120], potLife: [2, 8] },
	C: { film: [8, 25], flash: [5, 15], cure: [135, 165], potLife: null },
	D: { film: [12, 40], flash: [10, 20], cure: [230, 400], potLife: null },
	E: { film: [5, 25], flash: null, cure: null, potLife: null },
	F: { film: [12, 30], flash: [10, 30], cure: [80, 260], potLife: [2, 24] }
};

test('there is one demo sheet per family, each with its own id', () => {
	expect(DEMO_SHEETS.map(({ family }) => family).sort()).toEqual(Object.keys(FAMILIES));
	expect(new Set(DEMO_SHEETS.map(({ id }) => id)).size).toBe(DEMO_SHEETS.length);
});

describe.each(DEMO_SHEETS.map((sheet) => ({ sheet, ...TRADE[sheet.family] })))(
	'$sheet.id',
	({ sheet, film, flash, cure, potLife }) => {
		test('passes its own checks and is marked as demo', () => {
			expect(validateSheet(sheet)).toEqual({ ok: true, sheet });
			expect(sheet.demo).toBe(true);
			expect(sheet.title).toMatch(/^Demo /);
		});
		test('keeps inside what its family allows', () => {
			const dry = statedWindow(sheet, 'dry-film', DAY)!;
			expect(dry.min.value).toBeGreaterThanOrEqual(micrometres(film[0]));
			expect(dry.max.value).toBeLessThanOrEqual(micrometres(film[1]) + 1e-12);
			const wait = statedWindow(sheet, 'flash', DAY);
			expect(wait && [wait.min.value >= minutes(flash![0]), wait.max.value <= minutes(flash![1])]).toEqual(
				flash ? [true, true] : undefined
			);
			const oven = statedWindow(sheet, 'cure-metal-temperature', DAY);
			expect(oven && [oven.min.value >= celsius(cure![0]), oven.max.value <= celsius(cure![1])]).toEqual(
				cure ? [true, true] : undefined
			);
			const life = statedValue(sheet, 'pot-life', DAY);
			expect(life && [life.value >= hours(potLife![0]), life.value <= hours(potLife![1])]).toEqual(
				potLife ? [true, true] : undefined
			);
		});
		test('names the solids and the climate every plan needs', () => {
			expect(statedValue(sheet, 'volume-solids', DAY)!.value).toBeGreaterThan(percent(10));
			expect(statedWindow(sheet, 'humidity', DAY)!.max.value).toBeLessThanOrEqual(percent(85));
		});
	}
);

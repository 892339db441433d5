import type { Random } from '../../src/lib/drills/random';
import {
	DEMO_SHEETS,
	LINE_BOUNDS,
	SHEET_LINES,
	SHOP_VALUES,
	UNITS,
	settingProblems,
	unitOf,
	validateSheet,
	valueBounds,
	type DataSheet,
	type LineId,
	type SettingAmount,
	type SheetLine,
	type Shop,
	type ShopValueId
} from '../../src/lib/engine/index';
import { numberBetween } from './draw';

const ON = '2026-11-25';
const LATER = ['2026-06-30', '2026-11-25', '2026-11-26'];
/** A line is stretched by up to this, so that most still go with the rest of their sheet. */
const STRETCH = [0.5, 2] as const;

const ordered = (a: number, b: number) => (a <= b ? { min: a, max: b } : { min: b, max: a });

/** Another number for a line, in its own bounds: near the old one, or now and then anything. */
function otherNumber(line: LineId, si: number, random: Random): number {
	const [low, high] = LINE_BOUNDS[line];
	const wanted = random.onceIn(4)
		? numberBetween(low, high, random)
		: si * numberBetween(STRETCH[0], STRETCH[1], random);
	const inside = Math.min(Math.max(wanted, low), high);
	return SHEET_LINES[line].dimension === 'count' ? Math.round(inside) : inside;
}

/** A revision of a line with other numbers, in any unit of its quantity. */
function revised(line: LineId, entry: SheetLine, random: Random): SheetLine {
	const { dimension } = SHEET_LINES[line];
	const from = unitOf(dimension, entry.unit);
	const to = random.pick(UNITS[dimension]);
	const other = (printed: number) => to.fromSi(otherNumber(line, from.toSi(printed), random));
	const start = random.onceIn(3) ? random.pick(LATER) : entry.from;
	const { provenance } = entry;
	return 'min' in entry
		? { from: start, unit: to.id, provenance, ...ordered(other(entry.min), other(entry.max)) }
		: { from: start, unit: to.id, provenance, value: other(entry.value) };
}

/** The sheet with some lines rewritten, added to or left out, as long as a shop could enter it so. */
function otherSheet(sheet: DataSheet, random: Random): DataSheet {
	let changed = sheet;
	for (const [line, entries] of Object.entries(sheet.lines) as [LineId, readonly SheetLine[]][]) {
		if (!random.onceIn(5)) continue;
		const entry = revised(line, entries[0]!, random);
		const kept = entry.from === entries[0]!.from ? [entry] : [...entries, entry];
		const lines = { ...changed.lines, [line]: kept };
		if (random.onceIn(6)) delete lines[line];
		const checked = validateSheet({ ...changed, lines });
		if (checked.ok) changed = checked.sheet;
	}
	return changed;
}

function otherSetting(id: ShopValueId, random: Random): SettingAmount {
	const [low, high] = valueBounds(id);
	const value = SHOP_VALUES[id];
	const near = (si: number) =>
		random.onceIn(4)
			? numberBetween(low, high, random)
			: Math.min(Math.max(si * numberBetween(0.8, 1.25, random), low), high);
	return value.shape === 'window'
		? ordered(near(value.min), near(value.max))
		: { value: id.startsWith('gear.') ? random.integer(0, 1) : near(value.value) };
}

/** The demo shop, or one with other sheets and values that its own forms would have let a lead enter. */
export function randomShop(random: Random): Shop {
	let shop: Shop = { on: ON, sheets: {}, settings: {} };
	const asDemo = random.onceIn(3);
	const sheets = DEMO_SHEETS.map((sheet) => (asDemo ? sheet : otherSheet(sheet, random)));
	shop = { ...shop, sheets: Object.fromEntries(sheets.map((sheet) => [sheet.id, sheet])) };
	for (const id of Object.keys(SHOP_VALUES) as ShopValueId[]) {
		if (asDemo || !random.onceIn(8)) continue;
		const setting = otherSetting(id, random);
		if (settingProblems(id, setting, shop).length) continue;
		shop = { ...shop, settings: { ...shop.settings, [id]: { from: ON, ...setting } } };
	}
	return shop;
}

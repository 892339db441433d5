import { DEMO_SHEETS, type Shop } from '$lib/engine';

/** The demo sheets and default shop values. */
export const demoShop: Shop = {
	on: '2026-11-25',
	sheets: Object.fromEntries(DEMO_SHEETS.map((sheet) => [sheet.id, sheet])),
	settings: {}
};

/** A shop that has no data sheet yet. */
export const emptyShop: Shop = { ...demoShop, sheets: {} };

import { DEMO_SHEETS, type Shop } from '$lib/engine';

/** The demo sheets with nothing set by the shop, on a day. */
export const demoShop = (on = '2026-11-25'): Shop => ({
	on,
	sheets: Object.fromEntries(DEMO_SHEETS.map((sheet) => [sheet.id, sheet])),
	settings: {}
});

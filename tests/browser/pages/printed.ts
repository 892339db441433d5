import type { Page } from '@playwright/test';

const POINTS = { A4: [595, 842], Letter: [612, 792] } as const;
export type Paper = keyof typeof POINTS;

/** The page on paper: how many sheets, and whether each is of that size. */
export async function printed(page: Page, format: Paper) {
	const file = (await page.pdf({ format })).toString('latin1');
	const sizes = [...file.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)];
	const [width, height] = POINTS[format];
	// the browser prints whole pixels, so a side is off by up to one of them
	const isThat = (side: string | undefined, wanted: number) => Math.abs(Number(side) - wanted) < 1;
	return {
		sheets: [...file.matchAll(/\/Type \/Page\b(?!s)/g)].length,
		sized: sizes.length > 0 && sizes.every(([, wide, high]) => isThat(wide, width) && isThat(high, height))
	};
}

import { expect, type Locator, type Page } from '@playwright/test';

/** More stops than any page has: only a keyboard that goes round in circles needs so many. */
const STOPS = 600;

/** What has the focus: how it is named in a message, and whether a person can see that it has it. */
const stop = (page: Page) =>
	page.evaluate(() => {
		const at = document.activeElement;
		if (!at || at === document.body) return null;
		const { outlineStyle, outlineWidth } = getComputedStyle(at);
		const { top, bottom, left, right } = at.getBoundingClientRect();
		// a browser draws the focus on its own parts of a date by itself, and says of the field that it has none
		const inside = !at.matches(':focus') && at.matches('input[type="date"]');
		const onScreen = bottom > 0 && right > 0 && top < window.innerHeight && left < window.innerWidth;
		return {
			name: `${at.tagName} ${at.getAttribute('name') ?? ''} ${(at.textContent ?? '').trim().slice(0, 40)}`,
			seen: inside || (onScreen && outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2)
		};
	});

/** Presses a key and answers where the focus went; wherever that is, it must be seen. */
export async function pressTab(page: Page, key: 'Tab' | 'Shift+Tab' = 'Tab') {
	await page.keyboard.press(key);
	const at = await stop(page);
	expect(at?.seen ?? true, `the focus on "${at?.name}" cannot be seen`).toBe(true);
	return at;
}

const hasFocus = (wanted: Locator) => wanted.evaluate((element) => element === document.activeElement);

/** Goes to something with Tab alone. */
export async function tabTo(page: Page, wanted: Locator) {
	await expect(wanted).toBeVisible();
	for (let stops = 0; stops < STOPS; stops += 1) {
		if (await hasFocus(wanted)) return;
		await pressTab(page);
	}
	throw new Error(`${wanted} cannot be reached with Tab`);
}

/** Chooses one of several: Tab to the group, then the arrows. */
export async function choose(page: Page, name: string, value: string) {
	const group = page.locator(`input[type="radio"][name="${name}"]`);
	const wanted = page.locator(`input[type="radio"][name="${name}"][value="${value}"]`);
	const entry = page.locator(`input[type="radio"][name="${name}"]:checked`);
	await tabTo(page, (await entry.count()) ? entry : group.first());
	await page.keyboard.press('Space');
	for (let presses = await group.count(); !(await wanted.isChecked()) && presses > 0; presses -= 1)
		await page.keyboard.press('ArrowDown');
	await expect(wanted).toBeChecked();
}

/** Walks a page from its first stop round to it again; answers how many stops there are. */
export async function walkThrough(page: Page): Promise<number> {
	const first = page.locator('a.skip');
	await tabTo(page, first);
	for (let stops = 1; stops < STOPS; stops += 1) {
		await pressTab(page);
		if (await hasFocus(first)) return stops;
	}
	throw new Error(`${page.url()} holds the keyboard`);
}

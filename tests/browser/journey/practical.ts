import { expect, type Page } from '@playwright/test';
import { practical, type Lang } from '$lib/i18n';
import { insideOf } from './window-text';

/** A supervisor enters a practical they watched, every reading inside the limits printed beside it. */
export async function acceptPractical(page: Page, lang: Lang, person: string, competency: string) {
	const words = practical[lang];
	await page.goto(`/${lang}/people/${person}/practical/${competency}`);
	await page.getByRole('button', { name: words.choose }).click();
	const form = page.locator('main form[method="POST"]').last();
	await form.locator('input[name="time"]').fill(new Date().toTimeString().slice(0, 5));
	await form.locator('input[name="panels"]').fill('W1 W2 W3');
	await form.locator('input[name="serial-0"]').fill('G-17');
	for (const gate of await form.locator('input[name^="gate-"][value="met"]').all()) await gate.check();
	for (const reading of await form.locator('section[aria-labelledby^="reading-"]').all()) {
		const limits = (await reading.locator('.gauge').first().textContent()) ?? '';
		const inside = insideOf(limits);
		for (const box of await reading.locator('input').all())
			await box.fill([inside, inside, inside].join('; '));
	}
	await form.locator('input[name="result"][value="accepted"]').check();
	await form.locator('input[type="checkbox"]').last().check();
	await page.getByRole('button', { name: words.enter }).click();
	await expect(page).toHaveURL(/done=practical/);
}

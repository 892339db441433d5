import type { Page } from '@playwright/test';
import { benchCard, type Lang } from '$lib/i18n';

type Entries = Readonly<Record<string, string | readonly string[]>>;

/** Types one entry into whatever control the form has for it. */
async function enter(page: Page, name: string, value: string | readonly string[]) {
	const control = page.locator(`main form [name="${name}"]`);
	if (typeof value !== 'string') {
		for (const option of value) await page.locator(`main form [name="${name}"][value="${option}"]`).check();
		return;
	}
	const first = control.first();
	const [tag, type] = await first.evaluate((one) => [one.tagName, one.getAttribute('type')]);
	if (tag === 'SELECT') await first.selectOption(value);
	else if (type === 'radio') await page.locator(`main form [name="${name}"][value="${value}"]`).check();
	else await first.fill(value);
}

/** Fills in the form of a job as a person does, one part line after the other, and has it worked out. */
export async function workOut(page: Page, lang: Lang, entries: Entries) {
	await page.goto(`/${lang}/bench-card`);
	for (let lines = 1; lines < Number(entries.lines); lines += 1)
		await page.getByRole('button', { name: benchCard[lang].addPart, exact: true }).click();
	for (const [name, value] of Object.entries(entries)) if (name !== 'lines') await enter(page, name, value);
	await page.getByRole('button', { name: benchCard[lang].work, exact: true }).click();
}

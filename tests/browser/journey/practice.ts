import { expect, type Page } from '@playwright/test';
import { field } from '$lib/engine';
import { practice, practiceOutcome, practiceIssue, type Lang } from '$lib/i18n';
import { knownAnswers } from './drill';
import { askedOn, fillIn } from './fill-in';
import { readTicket } from './read-ticket';
import { ticketRows } from './ticket-rows';

/** Practises one ticket of one station: a look at a hint, one empty sheet checked, then filled in and handed in. */
export async function practise(page: Page, lang: Lang) {
	const words = practice[lang];
	await page.goto(`/${lang}/practice`);
	await page.locator('input[name="part"][value="mixing"]').check();
	await page.getByRole('button', { name: practiceIssue[lang].issue, exact: true }).click();
	await page.locator('button[name="hint"]').first().click();
	await expect(page.getByText(words.hintWhere).first()).toBeVisible();
	await page.getByRole('button', { name: words.check }).click();
	await expect(page.getByRole('button', { name: words.finish })).toBeVisible();
	const answers = knownAnswers(readTicket(await ticketRows(page), lang));
	for (const id of (await askedOn(page)).toSorted(
		(a, b) => Number(field(b).kind === 'order') - Number(field(a).kind === 'order')
	))
		await fillIn(page, id, answers[id]!, lang);
	await page.getByRole('button', { name: words.finish }).click();
	await expect(page.getByText(practiceOutcome[lang].result.clear)).toBeVisible();
}

import { expect, type Page } from '@playwright/test';
import { DEMO_SHEETS, field, rightAnswers, solve, type Job } from '$lib/engine';
import { proving, type Lang } from '$lib/i18n';
import { askedOn, fillIn } from './fill-in';
import { readTicket } from './read-ticket';
import { ticketRows } from './ticket-rows';

const sheets = Object.fromEntries(DEMO_SHEETS.map((sheet) => [sheet.id, sheet]));

/** What somebody who knows the trade would enter for a job they read. */
export const knownAnswers = (job: Job) => rightAnswers(solve(job, { on: job.on, sheets, settings: {} }));

/** Works the drill on the page: reads the ticket, fills in, looks it over, hands in. `careless` leaves the trade fields empty. */
export async function workDrill(page: Page, lang: Lang, careless = false) {
	const words = proving[lang];
	const answers = knownAnswers(readTicket(await ticketRows(page), lang));
	const asked = await askedOn(page);
	expect(asked.length).toBeGreaterThanOrEqual(3);
	// orders first: without JavaScript their buttons bring the page anew
	const sorted = asked.toSorted(
		(a, b) => Number(field(b).kind === 'order') - Number(field(a).kind === 'order')
	);
	for (const id of sorted) {
		const known = answers[id];
		if (careless && field(id).competency !== 'safety') continue;
		if (!known) throw new Error(`the ticket on the page does not say what to enter for ${id}`);
		await fillIn(page, id, known, lang);
	}
	await page.getByRole('button', { name: words.toReview }).click();
	await page.getByRole('button', { name: words.handIn, exact: true }).click();
	await expect(page).toHaveURL(/\/proving\/[^/]+$/);
}

/** Begins a run and works drills to its verdict; answers how many it took. */
export async function proveTo(page: Page, lang: Lang, begin: string, verdict: 'passed' | 'failed') {
	const words = proving[lang];
	await page.goto(`/${lang}/proving`);
	await page.getByRole('button', { name: begin, exact: true }).click();
	let drills = 0;
	while (!(await page.getByText(words.verdict[verdict]).isVisible())) {
		if (drills >= 45) throw new Error(`no verdict after ${drills} drills`);
		await page.getByRole('button', { name: words.issue }).click();
		await workDrill(page, lang, verdict === 'failed');
		drills += 1;
	}
	return drills;
}

import type { Browser, Page } from '@playwright/test';
import { proving, signOff, terms } from '$lib/i18n';
import { proveTo } from '../journey/drill';
import { doLessons } from '../journey/lesson';
import { acceptPractical } from '../journey/practical';
import { addPerson } from './add-person';
import { signInAs, signInWith } from './sign-in-as';

const TRAINEE = { name: 'Bruno Ferrer', role: 'trainee', secret: '580417' } as const;
/** Three runs hold enough drills for the safety gate, without which nothing is signed. */
const PROVEN = ['inspection', 'mixing', 'curing'] as const;
export const SIGNED = PROVEN[0];

async function sign(page: Page, person: string, secret: string) {
	const words = signOff.en;
	await page.goto(`/en/people/${person}/sign-off/${SIGNED}`);
	for (const question of Object.keys(words.conflict))
		await page.locator(`input[name="${question}"][value="no"]`).check();
	await page.locator('input[name="watchedBy"][value="nobody"]').check();
	await page.getByRole('button', { name: words.review, exact: true }).click();
	await page.locator('input[name="secret"]').fill(secret);
	await page.getByRole('button', { name: words.sign, exact: true }).click();
	await page.waitForURL(/done=signed/);
}

/** Brings a new person from the first lesson to a signature, by plain forms; answers the id. */
export async function signedTrainee(browser: Browser, baseURL: string): Promise<string> {
	const plain = { baseURL, javaScriptEnabled: false };
	const desk = await (await browser.newContext(plain)).newPage();
	const secret = await signInAs(desk, 'en', 'Marta Quiroga');
	const person = await addPerson(desk, 'en', TRAINEE);

	const bench = await (await browser.newContext(plain)).newPage();
	await signInWith(bench, 'en', person, TRAINEE.secret);
	await doLessons(bench, 'en', SIGNED);
	for (const station of PROVEN)
		await proveTo(bench, 'en', proving.en.openRun(terms.en.station[station]), 'passed');
	await bench.context().close();

	await acceptPractical(desk, 'en', person, SIGNED);
	await sign(desk, person, secret);
	await desk.context().close();
	return person;
}

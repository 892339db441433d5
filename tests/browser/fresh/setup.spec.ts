import { expect, test, type Page } from '@playwright/test';
import {
	LANGS,
	practice,
	practiceIssue,
	practiceProblems,
	setup,
	shell,
	shopSheets,
	type Lang
} from '$lib/i18n';
import { addPerson } from '../pages/add-person';
import { signInWith } from '../pages/sign-in-as';
import { expectSound } from '../pages/sound';
import { startOwnServer, type OwnServer } from './own-server';

const SHOP = { shop: 'Birch Street Coating', zone: 'America/Mexico_City', lead: 'Elena Duarte' };
const PASSPHRASE = 'seven quiet blue hoses';
const CREW = {
	trainee: { name: 'Tomás Rivas', role: 'trainee', secret: '4826' },
	supervisor: { name: 'Ruth Alder', role: 'supervisor', secret: 'two green fence posts' }
} as const;

const field = (page: Page, name: string) => page.locator(`main form input[name="${name}"]`);

async function fillSetup(page: Page, lang: Lang, code: string) {
	await field(page, 'code').fill(code);
	for (const [name, text] of Object.entries(SHOP)) await field(page, name).fill(text);
	await field(page, 'secret').fill(PASSPHRASE);
	await field(page, 'again').fill(PASSPHRASE);
	await page.getByRole('button', { name: setup[lang].go, exact: true }).click();
}

for (const lang of LANGS)
	test.describe(`an empty data folder (${lang})`, () => {
		let server: OwnServer;
		test.use({ locale: lang });
		test.beforeAll(async () => {
			server = await startOwnServer();
		});
		test.afterAll(() => server.stop());

		test('the first visitor sets up the shop, adds the crew and the sheets, and a trainee practises', async ({
			browser
		}) => {
			test.setTimeout(600_000);
			const ids = { supervisor: '', trainee: '' };
			const page = await (await browser.newContext({ baseURL: server.url, locale: lang })).newPage();

			await test.step('every page leads to setting up', async () => {
				for (const path of ['/', `/${lang}`, `/${lang}/today`, `/${lang}/rules`, `/${lang}/sign-in`]) {
					await page.goto(path);
					await expect(page).toHaveURL(`/${lang}/setup`);
				}
				await expectSound(page, lang);
			});

			await test.step('a wrong code is refused and what was typed is kept, but for the secrets', async () => {
				await fillSetup(page, lang, 'AAAAA-22222');
				await expect(page.locator('main [role="alert"]')).toContainText(setup[lang].wrongCode);
				for (const [name, text] of Object.entries(SHOP)) await expect(field(page, name)).toHaveValue(text);
				for (const name of ['secret', 'again']) await expect(field(page, name)).toHaveValue('');
				await expectSound(page, lang);
			});

			await test.step('the code of the console sets up the shop, once', async () => {
				await fillSetup(page, lang, server.code.toLowerCase());
				await expect(page).toHaveURL(/\/sign-in\?who=/);
				expect((await page.request.get(`/${lang}/setup`)).status()).toBe(404);
				await signInWith(page, lang, new URL(page.url()).searchParams.get('who')!, PASSPHRASE);
				await expect(page.locator('header').getByText(SHOP.shop)).toBeVisible();
			});

			await test.step('the lead adds a supervisor and a trainee', async () => {
				ids.supervisor = await addPerson(page, lang, CREW.supervisor);
				ids.trainee = await addPerson(page, lang, CREW.trainee);
			});

			await test.step('without a data sheet there is no ticket', async () => {
				await page.goto(`/${lang}/practice`);
				await page.getByRole('button', { name: practiceIssue[lang].issue, exact: true }).click();
				await expect(page.locator('main [role="alert"]')).toHaveText(practiceProblems[lang].noSheets);
			});

			await test.step('the lead adds the sheets that come with the program', async () => {
				await page.goto(`/${lang}/shop/sheets`);
				await expectSound(page, lang);
				await page.getByRole('button', { name: shopSheets[lang].addDemo, exact: true }).click();
				await expect(page.locator('main table tbody tr').nth(5)).toBeVisible();
			});

			await test.step('the trainee signs in and practises', async () => {
				await signInWith(page, lang, ids.trainee, CREW.trainee.secret);
				await page.getByRole('link', { name: shell[lang].screen.practice, exact: true }).click();
				await page.getByRole('button', { name: practiceIssue[lang].issue, exact: true }).click();
				await expect(page).toHaveURL(/\/practice\/[^/]+$/);
				await page.getByRole('button', { name: practice[lang].check, exact: true }).click();
				await expect(page.locator('form#step [role="status"]').first()).toBeVisible();
			});

			await test.step('the supervisor signs in and finds the trainee on the crew board', async () => {
				await signInWith(page, lang, ids.supervisor, CREW.supervisor.secret);
				await page.getByRole('link', { name: shell[lang].screen.crew, exact: true }).click();
				await expect(page.getByRole('heading', { name: CREW.trainee.name })).toBeVisible();
			});
			await page.context().close();
		});
	});

test('a server started without the demo shows no secrets and leads to setting up', async ({ page }) => {
	await page.goto('/es/lessons');
	await expect(page).toHaveURL('/es/setup');
	await expect(page.locator('h1')).toHaveText(setup.es.title);
	await page.getByRole('link', { name: shell.en.inThisLanguage, exact: true }).click();
	await expect(page).toHaveURL('/en/setup');
	await expect(page.getByText(shell.en.demo)).toHaveCount(0);
});

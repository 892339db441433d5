import { expect, test, type Browser } from '@playwright/test';
import { Window } from 'happy-dom';
import { RULES } from '$lib/engine';
import { LANGS, shell } from '$lib/i18n';
import { BANNED } from '../../house/banned-words';
import { fillShop, type FilledShop, type Viewer } from './filled-shop';
import { pageRoutes } from './page-routes';
import { expectSound } from './sound';
import { visits } from './visits';

// shown only before there is a shop: tests/browser/fresh looks at it
const BEFORE_THE_SHOP = ['/setup'];
const routes = pageRoutes().filter((route) => !BEFORE_THE_SHOP.includes(route));

let shop: FilledShop;

test.describe.configure({ timeout: 180_000 });
test.beforeAll(async ({ browser, baseURL }) => {
	test.setTimeout(180_000);
	shop = await fillShop(browser, baseURL!);
});

const pageOf = async (browser: Browser, as: Viewer, baseURL: string | undefined) =>
	(await browser.newContext({ baseURL, storageState: shop.signIns[as] })).newPage();

test('every visit goes to a page that is there', () => {
	expect(routes.length).toBeGreaterThan(30);
	expect(Object.keys(visits(shop)).toSorted()).toEqual(routes);
});

for (const route of routes)
	test(`${route} is sound in both languages`, async ({ browser, baseURL }) => {
		const here = visits(shop)[route] ?? [];
		expect(here.length, `nobody has said how to get to ${route}`).toBeGreaterThan(0);
		for (const { as, path } of here) {
			const page = await pageOf(browser, as, baseURL);
			const answer = await page.goto(`/en${path}`);
			expect(answer?.status()).toBe(200);
			await expect(page).toHaveURL(`/en${path}`);
			await expectSound(page, 'en');
			await page.getByRole('link', { name: shell.es.inThisLanguage, exact: true }).click();
			await expect(page).toHaveURL(`/es${path}`);
			await expectSound(page, 'es');
			await page.context().close();
		}
	});

test('every rule has its page in both languages', async ({ request }) => {
	for (const lang of LANGS)
		for (const { id, title } of RULES) {
			const answer = await request.get(`/${lang}/rules/${id}`);
			expect.soft(answer.status(), id).toBe(200);
			const { document } = new Window();
			document.body.innerHTML = await answer.text();
			expect.soft(document.querySelector('h1')?.textContent, id).toBe(title[lang]);
			const words = document.querySelector('main')?.textContent ?? '';
			expect.soft(BANNED.exec(words)?.[0], `a word not used here, on ${lang} ${id}`).toBeUndefined();
		}
});

test('a page that is not there, and one that is not open to a person, are sound too', async ({
	browser,
	baseURL
}) => {
	const page = await pageOf(browser, 'trainee', baseURL);
	for (const lang of LANGS) {
		expect((await page.goto(`/${lang}/nowhere`))?.status()).toBe(404);
		await expectSound(page, lang);
		expect((await page.goto(`/${lang}/record`))?.status()).toBe(403);
		await expectSound(page, lang);
	}
	expect((await page.goto('/nowhere'))?.status()).toBe(404);
	await expectSound(page, 'en');
	await page.context().close();
});

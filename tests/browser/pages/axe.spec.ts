import { expect, test, type Browser } from '@playwright/test';
import { LANGS } from '$lib/i18n';
import { bookVisits } from './book-visits';
import { fillShop, type FilledShop, type Viewer } from './filled-shop';
import { pageRoutes } from './page-routes';
import { expectSound } from './sound';
import { expectSoundInBoth } from './sound-in-both';
import { shopVisits } from './shop-visits';

// shown only before there is a shop: tests/browser/fresh looks at it
const BEFORE_THE_SHOP = ['/setup'];
const routes = pageRoutes().filter((route) => !BEFORE_THE_SHOP.includes(route));

let shop: FilledShop;

test.describe.configure({ timeout: 400_000 });
test.beforeAll(async ({ browser, baseURL }) => {
	test.setTimeout(600_000);
	shop = await fillShop(browser, baseURL!);
});

const pageOf = async (browser: Browser, as: Viewer, baseURL: string | undefined) =>
	(await browser.newContext({ baseURL, storageState: shop.signIns[as] })).newPage();

test('every page of the route tree is visited, and every visit goes to one', () => {
	expect(routes.length).toBeGreaterThan(30);
	expect(Object.keys({ ...bookVisits, ...shopVisits(shop) }).toSorted()).toEqual(routes);
});

for (const route of routes.filter((one) => !(one in bookVisits)))
	test(`${route} is sound in both languages`, async ({ browser, baseURL }) => {
		const here = shopVisits(shop)[route] ?? [];
		expect(here.length, `nobody has said how to get to ${route}`).toBeGreaterThan(0);
		for (const { as, path } of here) {
			const page = await pageOf(browser, as, baseURL);
			await expectSoundInBoth(page, path);
			await page.context().close();
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

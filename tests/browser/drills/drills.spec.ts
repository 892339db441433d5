import type { Browser, BrowserContextOptions, Page, Response } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { DRILL_KINDS, type DrillKindId } from '$lib/drills';
import { rightAnswers, type FieldId, type Plan } from '$lib/engine';
import { gunBench, practice, practiceIssue, practiceOutcome, type Lang } from '$lib/i18n';
import { expect, test } from '../journey/fixtures';
import { askedOn, fillIn } from '../journey/fill-in';
import { changeTo } from '../journey/people';
import { walkThrough } from '../pages/by-keyboard';
import { expectSound } from '../pages/sound';

/** A phone held upright, and nothing but a finger. */
const PHONE = { viewport: { width: 320, height: 640 }, hasTouch: true };
const MOST_SCRIPT = 60_000;

type Kept = { readonly plan: Plan; readonly steps: readonly { readonly fields: readonly FieldId[] }[] };

/** The drill as the program keeps it: a test has no other way to know what is right on a random ticket. */
function kept(dataFolder: string, page: Page): Kept {
	const attempt = new URL(page.url()).pathname.split('/').at(-1)!;
	const drafts = JSON.parse(readFileSync(join(dataFolder, 'drafts.json'), 'utf8')) as Record<string, Kept>;
	const [, drill] = Object.entries(drafts).find(([key]) => key.endsWith(` ${attempt}`))!;
	return drill;
}

async function issue(page: Page, lang: Lang, kind: DrillKindId) {
	await page.goto(`/${lang}/practice`);
	await page.locator(`input[name="part"][value="${kind}"]`).check();
	await page.getByRole('button', { name: practiceIssue[lang].issue, exact: true }).click();
	await expect(page).toHaveURL(/\/practice\/[^/]+$/);
}

/** Fills in every page as the plan does and hands the drill in. */
async function workThrough(page: Page, lang: Lang, { plan, steps }: Kept) {
	const words = practice[lang];
	const right = rightAnswers(plan);
	for (const at of steps.keys()) {
		const asked = await askedOn(page);
		expect([...asked].sort()).toEqual([...steps[at]!.fields].sort());
		// moving without JavaScript shows the page anew: orders come first
		for (const id of asked.toSorted(
			(a, b) => Number(right[b]!.kind === 'order') - Number(right[a]!.kind === 'order')
		))
			await fillIn(page, id, right[id]!, lang);
		await page.getByRole('button', { name: words.check, exact: true }).click();
		await expect(page.getByText(words.checkedClear)).toBeVisible();
		const last = at === steps.length - 1;
		await page.getByRole('button', { name: last ? words.finish : words.next, exact: true }).click();
	}
	await expect(page.getByRole('heading', { name: practiceOutcome[lang].doneTitle, level: 1 })).toBeVisible();
	await expect(page.getByText(practiceOutcome[lang].result.clear)).toBeVisible();
}

async function traineeOn(browser: Browser, lang: Lang, options: BrowserContextOptions): Promise<Page> {
	const page = await (await browser.newContext(options)).newPage();
	await changeTo(page, lang, 'trainee');
	return page;
}

/** Bytes of script, compressed, that the page in hand loads before anybody does anything. */
async function scriptBytes(page: Page): Promise<number> {
	const scripts: Promise<number>[] = [];
	const note = (response: Response) => {
		if (response.request().resourceType() === 'script')
			scripts.push(response.body().then((body) => gzipSync(body).length));
	};
	page.on('response', note);
	await page.goto(page.url(), { waitUntil: 'networkidle' });
	page.off('response', note);
	const sizes = await Promise.all(scripts);
	expect(sizes.length).toBeGreaterThan(0);
	return sizes.reduce((sum, size) => sum + size, 0);
}

test.describe.configure({ timeout: 240_000 });

for (const { id } of DRILL_KINDS) {
	test(`${id} on a phone: sound, every stop reached by keyboard, done by touch, light to load`, async ({
		browser,
		baseURL,
		dataFolder
	}) => {
		const page = await traineeOn(browser, 'en', { baseURL, ...PHONE });
		await issue(page, 'en', id);
		await expectSound(page, 'en');
		await page.setViewportSize(PHONE.viewport);
		expect(await walkThrough(page)).toBeGreaterThan(10);

		expect(await scriptBytes(page)).toBeLessThanOrEqual(MOST_SCRIPT);
		await workThrough(page, 'en', kept(dataFolder, page));
		await page.context().close();
	});

	test(`${id} in Spanish without JavaScript`, async ({ browser, baseURL, dataFolder }) => {
		const page = await traineeOn(browser, 'es', { baseURL, ...PHONE, javaScriptEnabled: false });
		await issue(page, 'es', id);
		await workThrough(page, 'es', kept(dataFolder, page));
		await page.context().close();
	});
}

test('the gun bench opens in place, draws what the sliders say and writes it into the sheet', async ({
	browser,
	baseURL
}) => {
	const page = await traineeOn(browser, 'en', { baseURL, ...PHONE });
	await issue(page, 'en', 'plan-the-passes');
	const at = page.url();
	// before its script is there, the button posts the form
	await page.waitForLoadState('networkidle');
	await page.getByRole('button', { name: gunBench.en.draw, exact: true }).click();
	const slider = page.locator('form input[type="range"]').first();
	await expect(slider).toBeFocused();
	await expect(page).toHaveURL(at);
	const film = page.locator('form figure svg.drawing');
	await expect(film).toBeVisible();
	const drawn = await film.innerHTML();
	await page.keyboard.press('End');
	await expect.poll(() => film.innerHTML()).not.toBe(drawn);
	await page.getByRole('button', { name: gunBench.en.take, exact: true }).click();
	await expect(page.locator('form input[name="gun-distance"]')).toHaveValue(/\d.*in/);
	await page.context().close();
});

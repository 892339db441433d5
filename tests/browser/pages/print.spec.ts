import { expect, test } from '@playwright/test';
import { LANGS, terms } from '$lib/i18n';
import { lessonSlugs } from './lesson-slugs';
import { printed, type Paper } from './printed';
import { signInAs } from './sign-in-as';
import { SIGNED, signedTrainee } from './signed-trainee';
import { expectSound } from './sound';

const PAPERS: readonly Paper[] = ['A4', 'Letter'];
/** The width between the margins of the print style, in CSS pixels. */
const WIDTH = { A4: Math.floor(((210 - 34) / 25.4) * 96), Letter: Math.floor(((215.9 - 34) / 25.4) * 96) };

test.describe('a signed competency', () => {
	let person: string;

	test.beforeAll(async ({ browser, baseURL }) => {
		test.setTimeout(8 * 60_000);
		person = await signedTrainee(browser, baseURL!);
	});

	test('its sheet is on two pages at most, with the last hash of the record on it', async ({ page }) => {
		await signInAs(page, 'en', 'Marta Quiroga');
		for (const lang of LANGS) {
			await page.goto(`/${lang}/people/${person}/sheet?competency=${SIGNED}`);
			await page.emulateMedia({ media: 'print' });
			await expect(page.getByText(/^[0-9a-f]{64}$/).first()).toBeVisible();
			await expect(page.locator('main').getByText('Marta Quiroga').first()).toBeVisible();
			await expect(page.getByRole('heading', { name: terms[lang].station[SIGNED] })).toBeVisible();
			await expect(page.locator('nav').first()).toBeHidden();
			for (const paper of PAPERS) {
				const { sheets, sized } = await printed(page, paper);
				expect.soft(sized, `${lang}, ${paper}`).toBe(true);
				expect.soft(sheets, `${lang}, ${paper}`).toBeGreaterThan(0);
				expect.soft(sheets, `${lang}, ${paper}`).toBeLessThanOrEqual(2);
			}
			await page.emulateMedia({ media: null });
		}
	});

	test('every page about it is sound', async ({ page }) => {
		test.setTimeout(600_000);
		await signInAs(page, 'en', 'Marta Quiroga');
		const record = `/people/${person}`;
		for (const path of [
			'/crew',
			record,
			`${record}/sheet`,
			`${record}/sign-off/${SIGNED}`,
			`${record}/continuity/${SIGNED}`
		])
			for (const lang of LANGS) {
				await page.goto(`/${lang}${path}`);
				await expectSound(page, lang);
			}
	});
});

/** The paper of who reads that language; both languages hold the same blocks. */
const PAPER_OF = { en: 'Letter', es: 'A4' } as const;

test('lessons and rules fit the width of the paper and a sensible number of pages', async ({ page }) => {
	test.setTimeout(600_000);
	for (const lang of LANGS)
		for (const path of [...lessonSlugs.map((slug) => `lessons/${slug}`), 'rules/blast-pressure']) {
			const paper = PAPER_OF[lang];
			await page.setViewportSize({ width: WIDTH[paper], height: 1000 });
			await page.goto(`/${lang}/${path}`);
			await page.emulateMedia({ media: 'print' });
			const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
			expect.soft(over, `${lang}/${path} is wider than ${paper}`).toBeLessThanOrEqual(0);
			const { sheets, sized } = await printed(page, paper);
			expect.soft(sized, `${lang}/${path}, ${paper}`).toBe(true);
			expect.soft(sheets, `${lang}/${path}, ${paper}`).toBeGreaterThan(0);
			expect.soft(sheets, `${lang}/${path}, ${paper}`).toBeLessThanOrEqual(16);
			await page.emulateMedia({ media: null });
		}
});

/** Lessons with the most rules: what fits of them fits of all. */
const FULLEST = ['blast-settings', 'air-and-dew-point', 'breathing-protection'];

test('a lesson for the wall is one sheet', async ({ page }) => {
	for (const lang of LANGS)
		for (const slug of FULLEST) {
			await page.goto(`/${lang}/lessons/${slug}/wall`);
			for (const paper of PAPERS)
				expect.soft((await printed(page, paper)).sheets, `${lang} ${slug}, ${paper}`).toBe(1);
		}
});

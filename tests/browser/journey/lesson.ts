import { expect, type Locator, type Page } from '@playwright/test';
import { RULES, taughtIn } from '$lib/engine';
import { fields, findings, lessons, type Lang } from '$lib/i18n';
import { insideOf } from './window-text';

/** The units named below a quantity field: the first will do for a try. */
const firstUnit = (hint: string, lang: Lang) => {
	const lead = fields[lang].units(['@']).split('@')[0]!;
	return hint.includes(lead)
		? hint
				.split(lead)[1]!
				.split(/,| or | o |\./)[0]!
				.trim()
		: '';
};

/** Answers, and tells whether the page then says it is right; the page opens again with the answer in it. */
async function answer(check: Locator, lang: Lang): Promise<boolean> {
	const page = check.page();
	await Promise.all([
		page.waitForResponse((response) => response.request().method() === 'POST'),
		check.locator('form > p button').last().click()
	]);
	return check
		.getByText(lessons[lang].right, { exact: true })
		.waitFor({ timeout: 2000 })
		.then(
			() => true,
			() => false
		);
}

/** Tries the options in turn, as somebody does who reads the reason after each try. */
async function byTrying(check: Locator, lang: Lang) {
	const options = await check.locator('input[type=radio]').count();
	for (let at = 0; at < options; at += 1) {
		await check.locator('input[type=radio]').nth(at).check();
		if (await answer(check, lang)) return;
	}
	throw new Error('no option is right');
}

/** Types a number, reads the window in the finding, and types one inside it. */
async function byReading(check: Locator, lang: Lang) {
	const box = check.locator('input:not([type=hidden])').first();
	const unit = firstUnit((await check.textContent()) ?? '', lang);
	// what has no unit is counted, in whole numbers
	await box.fill(unit ? `0.001 ${unit}` : '0');
	if (await answer(check, lang)) return;
	const window = check
		.locator('dt', { hasText: findings[lang].window })
		.locator('xpath=following-sibling::dd[1]')
		.first();
	await box.fill(insideOf((await window.textContent()) ?? ''));
	expect(await answer(check, lang)).toBe(true);
}

/** The lessons that teach the rules of an area. */
const lessonsOf = (area: string) => [
	...new Set(RULES.filter(({ competency }) => competency === area).map(taughtIn))
];

/** Does every lesson of an area. */
export async function doLessons(page: Page, lang: Lang, area: string) {
	for (const slug of lessonsOf(area)) await doLesson(page, lang, slug);
}

/** Does a lesson: every check in it until it is right. */
async function doLesson(page: Page, lang: Lang, slug: string) {
	await page.goto(`/${lang}/lessons/${slug}`);
	const checks = page.locator('section[id^="check-"]');
	const count = await checks.count();
	expect(count).toBeGreaterThanOrEqual(4);
	for (let at = 0; at < count; at += 1) {
		const check = checks.nth(at);
		if (await check.locator('input[type=radio]').count()) await byTrying(check, lang);
		else await byReading(check, lang);
	}
	await expect(page.getByText(lessons[lang].recorded).first()).toBeVisible();
}

import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import type { Lang } from '$lib/i18n';
import { BANNED } from '../../house/banned-words';
import { wordsOn } from './words-on';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
const WIDE = { width: 1280, height: 800 };
const NARROW = { width: 320, height: 640 };

/** What passes is not listed: that alone halves the time. */
const axe = (page: Page) =>
	new AxeBuilder({ page }).setLegacyMode(true).options({ resultTypes: ['violations'] });

const told = ({ violations }: Awaited<ReturnType<AxeBuilder['analyze']>>) =>
	violations.flatMap(({ id, nodes }) => nodes.map(({ target, html }) => `${id}: ${target} ${html}`));

/** What sticks out to the right of the screen, by its tag and class. */
const tooWide = (page: Page) =>
	page.evaluate(() =>
		document.documentElement.scrollWidth <= window.innerWidth
			? []
			: [...document.querySelectorAll('body *')]
					.filter((element) => element.getBoundingClientRect().right > window.innerWidth + 0.5)
					.map(({ tagName, className }) => `${tagName} ${className}`)
	);

/**
 * What must be true of any page, whatever it is about: a title, one first heading, its language, none of the words this
 * program does not use, no fault of WCAG 2.2 AA that axe can find on paper and in the dark, nothing wider than a
 * 320 px screen. Soft, so that one run names every fault.
 */
export async function expectSound(page: Page, lang: Lang) {
	const { pathname, search } = new URL(page.url());
	const at = pathname + search;
	await expect.soft(page.locator('h1'), `first headings of ${at}`).toHaveCount(1);
	await expect.soft(page.locator('h1'), `first heading of ${at}`).toHaveText(/\S/);
	await expect.soft(page.locator('html'), `language of ${at}`).toHaveAttribute('lang', lang);
	await expect.soft(page, `title of ${at}`).toHaveTitle(/\S/);
	expect.soft(BANNED.exec(await wordsOn(page))?.[0], `a word not used here, on ${at}`).toBeUndefined();

	expect.soft(told(await axe(page).withTags(TAGS).analyze()), `axe on ${at}`).toEqual([]);

	await page.setViewportSize(NARROW);
	await page.emulateMedia({ colorScheme: 'dark' });
	expect.soft(await tooWide(page), `wider than 320 px on ${at}`).toEqual([]);
	const inDark = await axe(page).withRules(['color-contrast', 'target-size']).analyze();
	expect.soft(told(inDark), `axe in the dark at 320 px on ${at}`).toEqual([]);
	await page.emulateMedia({ colorScheme: 'light' });
	await page.setViewportSize(WIDE);
}

import { expect, type Page } from '@playwright/test';
import { incidents, type Lang } from '$lib/i18n';
import { CREW } from './people';

const RULE = 'spot-minimum';

/** The supervisor reports a defect, looks at the causes, records a test and decides that a skill slipped; answers its id. */
export async function reportAndDecide(page: Page, lang: Lang): Promise<string> {
	const words = incidents[lang];
	await page.goto(`/${lang}/incidents/new?defect=pinpoint-rust`);
	await page.locator('input[name="job"]').fill('T-4711');
	await page.locator(`input[name="person"][value="${CREW.trainee.id}"]`).check();
	await page.getByRole('button', { name: words.send }).click();
	await expect(page).toHaveURL(/\/incidents\/(?!new)[^/?#]+/);
	const id = page.url().split('/').at(-1)!.split(/[?#]/)[0]!;

	const cause = page.locator(`article[aria-labelledby="cause-${RULE}"]`);
	await cause.locator('summary').click();
	await cause.locator('input[name="shown"]').first().check();
	await cause.getByRole('button', { name: words.enterTest }).click();

	await page.getByText(words.gapTitle).click();
	await page.locator(`input[name="rules"][value="${RULE}"]`).check();
	await page
		.locator('form[action="?/gap"] textarea, form[action="?/gap"] input[type="text"]')
		.last()
		.fill('Spot readings on the witness: 11 µm');
	await page.getByRole('button', { name: words.decideGap }).click();
	await expect(page).toHaveURL(/#decided/);
	return id;
}

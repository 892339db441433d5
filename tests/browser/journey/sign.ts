import { expect, type Page } from '@playwright/test';
import { signOff, type Lang } from '$lib/i18n';
import { CREW } from './people';

/** The supervisor looks at the evidence, declares, looks over and signs. */
export async function sign(page: Page, lang: Lang, path: string) {
	const words = signOff[lang];
	await page.goto(path);
	for (const question of Object.keys(words.conflict))
		await page.locator(`input[name="${question}"][value="no"]`).check();
	await page.locator('input[name="watchedBy"][value="nobody"]').check();
	await page.getByRole('button', { name: words.review }).click();
	await page.locator('input[name="secret"]').fill(CREW.supervisor.secret);
	await page.getByRole('button', { name: words.sign, exact: true }).click();
	await expect(page).toHaveURL(/done=(signed|refresher)/);
}

import { expect, type Page } from '@playwright/test';
import { shell } from '$lib/i18n';
import { expectSound } from './sound';

/** Looks at a page in English, and by its own language switch in Spanish. */
export async function expectSoundInBoth(page: Page, path: string) {
	const answer = await page.goto(`/en${path}`);
	expect(answer?.status(), path).toBe(200);
	await expect(page).toHaveURL(`/en${path}`);
	await expectSound(page, 'en');
	await page.getByRole('link', { name: shell.es.inThisLanguage, exact: true }).click();
	await expect(page).toHaveURL(`/es${path}`);
	await expectSound(page, 'es');
}

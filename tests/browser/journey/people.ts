import { expect, type Page } from '@playwright/test';
import type { Lang } from '$lib/i18n';

/** The demo crew, with the secrets the sign-in page shows. */
export const CREW = {
	trainee: { id: 'demo-trainee', secret: '2580' },
	/** The founding lead, who also supervises: the only one who may sign before anybody has been signed for. */
	supervisor: { id: 'demo-lead', secret: 'nine copper racks' }
} as const;

/** Whoever is at the PC hands over to somebody else. */
export async function changeTo(page: Page, lang: Lang, who: keyof typeof CREW) {
	const { id, secret } = CREW[who];
	await page.goto(`/${lang}/sign-in?who=${id}`);
	await page.fill('input[name="secret"]', secret);
	await page.locator('main form button.primary').click();
	await expect(page).not.toHaveURL(/sign-in/);
}

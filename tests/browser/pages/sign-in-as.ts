import { expect, type Page } from '@playwright/test';
import { signIn, type Lang } from '$lib/i18n';

/** Signs somebody in, named by their id, with a secret they were given. */
export async function signInWith(page: Page, lang: Lang, person: string, secret: string) {
	await page.goto(`/${lang}/sign-in?who=${person}`);
	await page.locator('input[name="secret"]').fill(secret);
	await page.locator('main').getByRole('button', { name: signIn[lang].go, exact: true }).click();
	await expect(page).not.toHaveURL(/sign-in/);
}

/** Signs one of the demo crew in with the secret the sign-in page shows beside the name; answers that secret. */
export async function signInAs(page: Page, lang: Lang, name: string): Promise<string> {
	await page.goto(`/${lang}/sign-in`);
	const row = page.locator('section[aria-labelledby="demo-people"] tr', { hasText: name });
	const secret = await row.locator('td').last().innerText();
	const link = page.locator('main .crew').getByRole('link', { name, exact: true });
	const address = new URL((await link.getAttribute('href'))!, page.url());
	await signInWith(page, lang, address.searchParams.get('who')!, secret);
	return secret;
}

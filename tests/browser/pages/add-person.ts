import { expect, type Page } from '@playwright/test';
import { shopPeople, type Lang } from '$lib/i18n';

interface Newcomer {
	readonly name: string;
	readonly role: 'trainee' | 'supervisor';
	readonly secret: string;
}

/** The lead at the page adds somebody; answers the id. */
export async function addPerson(page: Page, lang: Lang, { name, role, secret }: Newcomer): Promise<string> {
	await page.goto(`/${lang}/shop/people/new`);
	await page.locator('input[name="name"]').fill(name);
	await page.locator(`input[name="roles"][value="${role}"]`).check();
	await page.locator(`input[name="lang"][value="${lang}"]`).check();
	await page.locator('input[name="secret"]').fill(secret);
	await page.locator('input[name="again"]').fill(secret);
	await page.getByRole('button', { name: shopPeople[lang].addGo, exact: true }).click();
	await expect(page.locator('main [role="status"]').first()).toHaveText(shopPeople[lang].done.added);
	return new URL(page.url()).pathname.split('/').at(-1)!;
}

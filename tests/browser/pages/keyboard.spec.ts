import { expect, test } from '@playwright/test';
import { practice, practiceIssue, shell, signIn } from '$lib/i18n';
import { choose, pressTab, tabTo, walkThrough } from './by-keyboard';
import { signInAs } from './sign-in-as';

const TRAINEE = { name: 'Luis Paredes', pin: '7419' };
const words = practice.en;

test('signs in, issues a ticket, fills in a station, takes a hint and checks, with the keyboard alone', async ({
	page
}) => {
	test.setTimeout(400_000);
	const enter = () => page.keyboard.press('Enter');
	const main = page.locator('main');

	await page.goto('/en/sign-in');
	await tabTo(page, main.locator('.crew').getByRole('link', { name: TRAINEE.name, exact: true }));
	await enter();
	await tabTo(page, page.locator('input[name="secret"]'));
	await page.keyboard.type(TRAINEE.pin);
	await enter();
	await expect(page).not.toHaveURL(/sign-in/);

	const station = page.locator('form#step');
	// a ticket that has to be refused asks less at this station
	for (
		let tickets = 0;
		tickets < 12 && (await station.locator('fieldset ol li button').count()) === 0;
		tickets += 1
	) {
		await tabTo(
			page,
			page.locator('.across').getByRole('link', { name: shell.en.screen.practice, exact: true })
		);
		await enter();
		await expect(page).toHaveURL('/en/practice');
		await choose(page, 'part', 'spraying');
		await tabTo(page, main.getByRole('button', { name: practiceIssue.en.issue, exact: true }));
		await enter();
		await expect(page).toHaveURL(/\/practice\/[^/]+$/);
	}

	const go = await station.locator('input[type="radio"]').first().getAttribute('name');
	const goes = await station.locator(`input[name="${go}"]`).last().getAttribute('value');
	await choose(page, go!, goes!);

	const number = station.locator('input[name="gun-distance"]');
	await tabTo(page, number);
	await page.keyboard.type('8 in');

	const gear = station.locator('input[type="checkbox"]').first();
	await tabTo(page, gear);
	await page.keyboard.press('Space');
	await expect(gear).toBeChecked();

	const steps = station.locator('fieldset ol li .name');
	const before = await steps.allInnerTexts();
	await tabTo(page, station.locator('fieldset ol li').first().getByRole('button').last());
	await enter();
	await expect(steps.nth(1)).toHaveText(before[0]!);
	await expect(steps.nth(0)).toHaveText(before[1]!);
	await expect(station.locator('fieldset ol li button:focus')).toHaveCount(1);

	await tabTo(page, station.locator('button[name="hint"]').first());
	await enter();
	await expect(page.getByText(words.hintWhere).first()).toBeVisible();
	await expect(number).toHaveValue('8 in');
	await expect(gear).toBeChecked();
	await expect(steps.nth(0)).toHaveText(before[1]!);

	await tabTo(page, station.getByRole('button', { name: words.check, exact: true }));
	await enter();
	await expect(station.locator('[role="status"]').first()).toBeVisible();
	await expect(station.getByRole('button', { name: words.finish, exact: true })).toBeVisible();
});

test('the first stop leads past the head of the page', async ({ page }) => {
	await page.goto('/en/sign-in');
	await pressTab(page);
	const skip = page.getByRole('link', { name: shell.en.skip, exact: true });
	await expect(skip).toBeFocused();
	await page.keyboard.press('Enter');
	await expect(page.locator('main')).toBeFocused();
	await pressTab(page);
	await expect(page.locator('main :focus')).toHaveCount(1);
});

test('an entry that was not taken has the focus led to it', async ({ page }) => {
	await page.goto('/en/sign-in?who=demo-auditor');
	await tabTo(page, page.locator('input[name="secret"]'));
	await page.keyboard.type('not the passphrase');
	await page.keyboard.press('Enter');
	const summary = page.locator('main [role="alert"]');
	await expect(summary).toContainText(signIn.en.wrong);
	await expect(summary).toBeFocused();
	await pressTab(page);
	await page.keyboard.press('Enter');
	await expect(page.locator('input[name="secret"]')).toBeFocused();
});

test('no page holds the keyboard, and every stop is seen', async ({ page }) => {
	test.setTimeout(600_000);
	await signInAs(page, 'en', 'Marta Quiroga');
	for (const path of [
		'/today',
		'/crew',
		'/practice',
		'/lessons/soak',
		'/people/demo-trainee',
		'/incidents/new?defect=pinpoint-rust',
		'/bench-card',
		'/record',
		'/shop/people/new',
		'/shop/values/gear'
	]) {
		await page.goto(`/en${path}`);
		expect(await walkThrough(page), path).toBeGreaterThan(10);
	}
});

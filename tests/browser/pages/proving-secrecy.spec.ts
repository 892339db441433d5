import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { FIELD_IDS, RULES, SHOP_VALUES } from '$lib/engine';
import { proving, requests, shell, terms, today } from '$lib/i18n';
import { expect, test } from '../journey/fixtures';
import { signInAs } from './sign-in-as';

/** Names only the engine knows. Some rules are called as the field they judge, which the form has to name. */
const ENGINE_NAMES = [
	...RULES.map(({ id }) => id).filter((id) => !(FIELD_IDS as readonly string[]).includes(id)),
	...Object.keys(SHOP_VALUES)
];
const engineNamesIn = (text: string) =>
	ENGINE_NAMES.filter((name) => new RegExp(`(?<![\\w-])${name.replaceAll('.', '\\.')}(?![\\w-])`).test(text));

/** Keys under which a plan, its windows or their grading would travel. */
const KEYS =
	/"(seed|expected|expectation|demands|superseded|plan|window|min|max|traps?|rules?|severity|answers?)":/g;

interface Issued {
	readonly drill: string;
	readonly seed: string;
	readonly rules: readonly string[];
	readonly expected: unknown;
}

/** The drill as the journal holds it: with everything its person must not see. */
function issuedIn(dataFolder: string, drill: string): Issued {
	const lines = readFileSync(join(dataFolder, 'journal.jsonl'), 'utf8').trim().split('\n');
	const entries = lines.map((line) => JSON.parse(line) as { event: string; data: Issued });
	const found = entries.find(({ event, data }) => event === 'proving.issued' && data.drill === drill);
	if (!found) throw new Error(`drill ${drill} is not in the journal`);
	return found.data;
}

/** Numbers precise enough that they do not stand in a page by chance. */
const preciseNumbers = (value: unknown) =>
	[...JSON.stringify(value).matchAll(/-?\d+(\.\d+)?/g)]
		.map(([number]) => number)
		.filter((number) => number.replace(/\D/g, '').length >= 5);

test('an open proving drill gives nothing away and closes the book', async ({ page, dataFolder }) => {
	test.setTimeout(400_000);
	const scripts = new Map<string, string>();
	const data: string[] = [];
	page.on('response', async (response) => {
		const type = response.headers()['content-type'] ?? '';
		if (/javascript/.test(type)) scripts.set(response.url(), await response.text().catch(() => ''));
		if (/__data\.json/.test(response.url())) data.push(await response.text().catch(() => ''));
	});

	await test.step('the search finds the engine where it may be: in a lesson', async () => {
		await page.goto('/en/lessons/soak', { waitUntil: 'networkidle' });
		expect(engineNamesIn(await page.content())).not.toEqual([]);
		const lesson = await page.request.get('/en/lessons/soak/__data.json');
		expect(await lesson.text()).toMatch(new RegExp(KEYS.source));
	});

	await signInAs(page, 'en', 'Nia Okoro');
	scripts.clear();
	data.length = 0;

	const html: string[] = [];
	const look = async () => {
		await page.waitForLoadState('networkidle');
		const path = page.url().replace(/\?.*/, '');
		html.push((await (await page.request.get(page.url())).text()) + (await page.content()));
		data.push(await (await page.request.get(`${path}/__data.json`)).text());
	};

	await page.goto('/en/proving');
	await look();
	const begin = proving.en.openRun(terms.en.station.spraying);
	await page.getByRole('button', { name: begin, exact: true }).click();
	await expect(page).toHaveURL(/\/proving\/[^/]+$/);
	await look();
	await page.getByRole('button', { name: proving.en.issue, exact: true }).click();
	await expect(page).toHaveURL(/\/proving\/[^/]+\/[^/]+$/);
	await look();
	const drillPage = page.url();
	await page.getByRole('button', { name: proving.en.toReview, exact: true }).click();
	await expect(page).toHaveURL(/\?review/);
	await look();
	await page.goto('/en/today');
	await look();

	const drill = new URL(drillPage).pathname.split('/').at(-1)!;
	const { seed, rules, expected } = issuedIn(dataFolder, drill);
	expect(rules.length).toBeGreaterThan(0);
	expect(html.length).toBe(5);

	await test.step('scripts know no rule and no shop value', () => {
		expect(scripts.size).toBeGreaterThan(3);
		for (const [url, script] of scripts) expect.soft(engineNamesIn(script), url).toEqual([]);
	});

	await test.step('pages and data hold neither seed nor windows nor rules', () => {
		expect(data.every((text) => text.startsWith('{'))).toBe(true);
		for (const text of [...html, ...data]) {
			expect.soft(new RegExp(`(?<!\\d)${seed}(?!\\d)`).test(text), 'the seed').toBe(false);
			expect.soft(engineNamesIn(text)).toEqual([]);
			expect.soft(preciseNumbers(expected).filter((number) => text.includes(number))).toEqual([]);
		}
		for (const text of data) expect.soft(text.match(KEYS) ?? []).toEqual([]);
	});

	await test.step('rules, lessons and practice answer with the notice', async () => {
		for (const lang of ['en', 'es'] as const)
			for (const path of [
				'/rules',
				'/rules/checks',
				'/rules/numbers',
				`/rules/${rules[0]}`,
				'/lessons',
				'/lessons/passes',
				'/practice'
			]) {
				await page.goto(`/${lang}${path}`);
				await expect(page).toHaveURL(`/${lang}/closed-book`);
				await expect(page.locator('h1')).toHaveText(requests[lang].closedBook.title);
				const bare = await page.request.get(`/${lang}${path}/__data.json`);
				expect(await bare.json()).toEqual({ type: 'redirect', location: `/${lang}/closed-book` });
			}
	});

	await test.step('Today still works and leads back to the drill', async () => {
		expect((await page.goto('/en/today'))?.status()).toBe(200);
		await expect(page.locator('h1')).toHaveText(today.en.title);
		await page.locator('main').getByRole('link', { name: today.en.toDrill, exact: true }).click();
		await expect(page).toHaveURL(drillPage);
	});

	await test.step('given up, the book is open again', async () => {
		await page.getByText(proving.en.giveUp, { exact: true }).first().click();
		await page.locator('input[name="sure"]').check();
		await page.getByRole('button', { name: proving.en.giveUp, exact: true }).click();
		await expect(page).toHaveURL(/\/proving\/[^/]+$/);
		await page.getByRole('link', { name: shell.en.screen.rules, exact: true }).click();
		await expect(page).toHaveURL('/en/rules');
	});
});

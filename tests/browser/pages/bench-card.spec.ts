import { expect, test, type Page } from '@playwright/test';
import { DEMO_SHEETS, EXAMPLE_JOBS, type Job } from '$lib/engine';
import { benchCard, fields, LANGS, terms, type Lang } from '$lib/i18n';
import { entriesOfJob } from '../../behaviour/server/bench-card/entries-of-job';
import { workOut } from './fill-job';
import { printed, type Paper } from './printed';
import { signInAs } from './sign-in-as';
import { expectSound } from './sound';

const PAPERS: readonly Paper[] = ['A4', 'Letter'];
/** Metals and polymers, one and two parts, one line and two, with and without something that is not in order. */
const JOBS = [
	['steel-plates', 'demo-a-isocyanate'],
	['mixed-rack', 'demo-b-amine-epoxy'],
	['castings', 'demo-f-catalysed'],
	['damp-polyamide', 'demo-e-air-cured'],
	['bearded-sprayer', 'demo-a-isocyanate']
] as const;

function entries(id: string, coating: string) {
	const day = new Date().toISOString().slice(0, 10);
	const example = EXAMPLE_JOBS.find((one) => one.id === id)!;
	const parts = DEMO_SHEETS.find((sheet) => sheet.id === coating)!.parts;
	return entriesOfJob({ ...example.on(day), ticket: 'T-4711', coating } as Job, parts);
}

const steel = () => entries('steel-plates', 'demo-a-isocyanate');
const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

test.describe('without script', () => {
	test.use({ javaScriptEnabled: false });

	for (const lang of LANGS)
		test(`a job becomes a card of one sheet, ${lang}`, async ({ page }) => {
			test.setTimeout(600_000);
			await signInAs(page, lang, 'Marta Quiroga');
			for (const [id, coating] of JOBS) {
				await workOut(page, lang, entries(id, coating));
				await expect(page.locator('h1'), id).toHaveText(benchCard[lang].titled('T-4711'));
				for (const paper of PAPERS) {
					const { sheets, sized } = await printed(page, paper);
					expect.soft(sized, `${id}, ${paper}`).toBe(true);
					expect.soft(sheets, `${id}, ${paper}`).toBe(1);
				}
			}
		});

	test('a fault is shown at its field, and nothing typed is lost on any way', async ({ page }) => {
		const words = benchCard.en;
		const air = page.locator('input[name="weather.air"]');
		await signInAs(page, 'en', 'Marta Quiroga');
		await workOut(page, 'en', { ...steel(), 'weather.air': '22' });
		await expect(page.getByRole('alert').first()).toContainText(words.correct);
		await expect(page.getByText(fields.en.toCorrect(1))).toBeVisible();
		await expect(air).toHaveAttribute('aria-invalid', 'true');
		await expect(air).toHaveValue('22');

		await air.fill('72 °F');
		await press(page, words.addPart);
		await expect(page).toHaveURL(/#part-2$/);
		await expect(air).toHaveValue('72 °F');
		await expect(page.locator('input[name="parts.1.name"]')).toHaveValue('');
		await press(page, words.dropPart(2));
		await expect(page.locator('input[name="parts.1.name"]')).toHaveCount(0);

		await page.locator('input[name="ticket"]').press('Enter');
		await expect(page.locator('h1')).toHaveText(words.titled('T-4711'));
		await press(page, words.otherUnits.metric);
		await expect(page.locator('.stations')).toContainText('mm');
		await press(page, words.otherLanguage);
		await expect(page.locator('h1')).toHaveText(benchCard.es.titled('T-4711'));
		await press(page, benchCard.es.change);
		await expect(air).toHaveValue('72 °F');
		await expect(page.locator('select[name="parts.0.material"]')).toHaveValue('carbon-steel');
		await expect(page.locator('input[name="parts.0.masked"][value="thread"]')).toBeChecked();
	});
});

async function seen(page: Page, lang: Lang) {
	await workOut(page, lang, entries('bearded-sprayer', 'demo-a-isocyanate'));
	await expect(page.locator('h1')).toHaveText(benchCard[lang].titled('T-4711'));
	await expect(page.getByRole('heading', { name: terms[lang].station.curing })).toBeVisible();
	await expectSound(page, lang);
	await workOut(page, lang, entries('sealed-floats', 'demo-a-isocyanate'));
	await expect(page.locator('h1')).toHaveText(benchCard[lang].refusedTitle);
	await expect(page.locator('.stations')).toHaveCount(0);
	await expectSound(page, lang);
	await workOut(page, lang, { ...entries('mixed-rack', 'demo-a-isocyanate'), customer: '' });
	await expect(page.getByRole('alert').first()).toContainText(benchCard[lang].correct);
	await expectSound(page, lang);
}

for (const lang of LANGS)
	test(`a card, a refusal and a form sent back are sound, ${lang}`, async ({ page }) => {
		test.setTimeout(400_000);
		await signInAs(page, lang, 'Marta Quiroga');
		await seen(page, lang);
	});

test('somebody signed for in nothing is told so, and sent to Today', async ({ page }) => {
	await signInAs(page, 'en', 'Luis Paredes');
	await page.goto('/en/bench-card');
	await expect(page.getByText(benchCard.en.notYours)).toBeVisible();
	await expect(page.locator('main form')).toHaveCount(0);
	await page.getByRole('link', { name: benchCard.en.toToday, exact: true }).click();
	await expect(page).toHaveURL('/en/today');
});

import { execFile } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { proving, record, skillPanel, terms } from '$lib/i18n';
import { proveTo } from './drill';
import { expect, test } from './fixtures';
import { doLessons } from './lesson';
import { changeTo, CREW } from './people';
import { acceptPractical } from './practical';
import { practise } from './practice';
import { reportAndDecide } from './incident';
import { sign } from './sign';

const run = promisify(execFile);
const root = fileURLToPath(new URL('../../..', import.meta.url));
const verifyJournal = (folder: string) =>
	run('npx', ['tsx', 'src/scripts/verify-journal.ts', folder], { cwd: root });

test('from the first lesson to a second signature', async ({ page, lang, dataFolder }) => {
	test.setTimeout(12 * 60_000);
	const inspection = terms[lang].station.inspection;
	const begin = (station: keyof (typeof terms)['en']['station']) =>
		proving[lang].openRun(terms[lang].station[station]);

	await test.step('a trainee does the lessons of a station and a practice drill', async () => {
		await changeTo(page, lang, 'trainee');
		await doLessons(page, lang, 'inspection');
		await practise(page, lang);
	});

	await test.step('a run answered carelessly fails, early', async () => {
		expect(await proveTo(page, lang, begin('spraying'), 'failed')).toBe(3);
	});

	await test.step('three runs answered right pass, at twelve drills each', async () => {
		for (const station of ['inspection', 'mixing', 'curing'] as const)
			expect(await proveTo(page, lang, begin(station), 'passed')).toBe(12);
		await page.goto(`/${lang}/proving`);
		await expect(page.getByText(proving[lang].safety.passed)).toBeVisible();
	});

	await test.step('a supervisor accepts the practical and signs', async () => {
		await changeTo(page, lang, 'supervisor');
		await acceptPractical(page, lang, CREW.trainee.id, 'inspection');
		await sign(page, lang, `/${lang}/people/${CREW.trainee.id}/sign-off/inspection`);
		await page.goto(`/${lang}/crew`);
		await expect(page.getByText(skillPanel[lang].standing.signed).first()).toBeVisible();
	});

	const incident =
		await test.step('a defect gets out: the skill that slipped is to be proven again', async () => {
			return reportAndDecide(page, lang);
		});

	await test.step('the trainee finds the refresher on Today and proves it', async () => {
		await changeTo(page, lang, 'trainee');
		await page.goto(`/${lang}/today`);
		await expect(page.getByText(terms[lang].refresher, { exact: false }).first()).toBeVisible();
		expect(await proveTo(page, lang, proving[lang].refresher(inspection), 'passed')).toBe(12);
	});

	await test.step('a second signature; crew board and record show it', async () => {
		await changeTo(page, lang, 'supervisor');
		await sign(page, lang, `/${lang}/people/${CREW.trainee.id}/sign-off/inspection?incident=${incident}`);
		await page.goto(`/${lang}/crew`);
		await expect(page.getByText(skillPanel[lang].standing['refresher-due'])).toHaveCount(0);
		await page.goto(`/${lang}/record`);
		await expect(
			page.locator('main article, main li').getByText(record[lang].kind['refresher.signed']).first()
		).toBeVisible();
	});

	await test.step('the journal verifies, and a line edited by hand is found and named', async () => {
		const journal = join(dataFolder, 'journal.jsonl');
		await page.goto(`/${lang}/record/verify`);
		const entries = readFileSync(journal, 'utf8').trimEnd().split('\n').length;
		await expect(page.getByText(record[lang].whole(entries))).toBeVisible();
		await verifyJournal(dataFolder);

		const lines = readFileSync(journal, 'utf8').split('\n');
		const at = lines.findIndex((line) => line.includes('"practical.recorded"'));
		const untouched = lines[at]!;
		lines[at] = untouched.replace('"accepted"', '"refused"');
		expect(lines[at]).not.toBe(untouched);
		writeFileSync(journal, lines.join('\n'));
		await page.reload();
		await expect(page.getByText(record[lang].bad(at + 1))).toBeVisible();
		const failed = await verifyJournal(dataFolder).catch(
			(error: { code: number; stdout: string; stderr: string }) => error
		);
		expect(failed).toMatchObject({ code: 1 });
		expect(`${failed.stdout}${failed.stderr}`).toContain(String(at + 1));
		lines[at] = untouched;
		writeFileSync(journal, lines.join('\n'));
	});
});

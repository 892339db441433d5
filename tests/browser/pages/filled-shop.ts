import type { Browser, Page } from '@playwright/test';
import { incidents, practice, practiceIssue, practiceOutcome, proving, terms } from '$lib/i18n';
import { addPerson } from './add-person';
import { signInAs, signInWith } from './sign-in-as';

/** Who looks at a page. Somebody with an open proving drill has the book closed, so that is a person of its own. */
export type Viewer = 'lead' | 'supervisor' | 'trainee' | 'auditor' | 'proving' | 'nobody';

type StorageState = Awaited<ReturnType<ReturnType<Page['context']>['storageState']>>;

/** The demo shop with something in every room, and the sign-in of everybody who looks at it. */
export interface FilledShop {
	readonly signIns: Readonly<Record<Viewer, StorageState>>;
	readonly person: string;
	readonly handedIn: string;
	readonly inHand: string;
	readonly drill: string;
	readonly incidents: { readonly open: string; readonly gap: string; readonly system: string };
}

const CREW = {
	lead: 'Marta Quiroga',
	supervisor: 'Dale Whitcomb',
	trainee: 'Luis Paredes',
	auditor: 'Ingrid Solheim'
};
const NEWCOMER = { name: 'Rosa Linares', role: 'trainee', secret: '360914' } as const;

/** Issues a practice ticket of one station and checks it as it is; answers its page. */
async function checkPractice(page: Page): Promise<string> {
	const words = practice.en;
	await page.goto('/en/practice');
	await page.locator('input[name="part"][value="spraying"]').check();
	await page.getByRole('button', { name: practiceIssue.en.issue, exact: true }).click();
	for (const rung of words.hintShort)
		await page.locator('button[name="hint"]', { hasText: rung }).first().click();
	await page.getByRole('button', { name: words.check, exact: true }).click();
	await page.getByRole('button', { name: words.finish, exact: true }).waitFor();
	return new URL(page.url()).pathname.replace(/^\/en/, '');
}

/** Reports a defect; answers the page of the incident. */
async function report(page: Page, defect: string, job: string, person: string): Promise<string> {
	await page.goto(`/en/incidents/new?defect=${defect}`);
	await page.locator('input[name="job"]').fill(job);
	await page.locator(`input[name="person"][value="${person}"]`).check();
	await page.getByRole('button', { name: incidents.en.send, exact: true }).click();
	await page.waitForURL(/\/incidents\/(?!new)/);
	return new URL(page.url()).pathname.replace(/^\/en/, '');
}

async function decide(page: Page, incident: string, how: 'system' | 'gap') {
	const words = incidents.en;
	await page.goto(`/en${incident}`);
	const form = page.locator(`form[action="?/${how}"]`);
	await page.getByText(how === 'gap' ? words.gapTitle : words.systemTitle, { exact: true }).click();
	if (how === 'gap') await form.locator('input[name="rules"]').first().check();
	for (const box of await form.locator('textarea').all()) await box.fill('Readings on the witness panel.');
	await form.locator('button').click();
	await page.waitForURL(/#decided/);
}

/** Begins a run, issues a drill and leaves it open; answers its page. */
async function openDrill(page: Page): Promise<string> {
	await page.goto('/en/proving');
	await page.getByRole('button', { name: proving.en.openRun(terms.en.station.curing), exact: true }).click();
	await page.getByRole('button', { name: proving.en.issue, exact: true }).click();
	await page.waitForURL(/\/proving\/[^/]+\/[^/]+$/);
	return new URL(page.url()).pathname.replace(/^\/en/, '');
}

/** Fills the demo shop by working in it, as the people of the shop do. */
export async function fillShop(browser: Browser, baseURL: string): Promise<FilledShop> {
	const at = async <T>(arrive: (page: Page) => Promise<unknown>, work: (page: Page) => Promise<T>) => {
		const context = await browser.newContext({ baseURL });
		const page = await context.newPage();
		await arrive(page);
		const done = await work(page);
		const signIn = await context.storageState();
		await context.close();
		return { done, signIn };
	};
	const as = (who: keyof typeof CREW) => (page: Page) => signInAs(page, 'en', CREW[who]);

	const lead = await at(as('lead'), async (page) => {
		const person = await addPerson(page, 'en', NEWCOMER);
		const handedIn = await checkPractice(page);
		await page.getByRole('button', { name: practice.en.finish, exact: true }).click();
		await page.getByRole('heading', { name: practiceOutcome.en.doneTitle, level: 1 }).waitFor();
		const open = await report(page, 'pinpoint-rust', 'T-4711', person);
		const gap = await report(page, 'pinpoint-rust', 'T-4712', person);
		const system = await report(page, 'pinpoint-rust', 'T-4713', person);
		await decide(page, gap, 'gap');
		await decide(page, system, 'system');
		return { person, handedIn, incidents: { open, gap, system } };
	});
	const supervisor = await at(as('supervisor'), checkPractice);
	const trainee = await at(as('trainee'), async () => undefined);
	const auditor = await at(as('auditor'), async () => undefined);
	const newcomer = await at((page) => signInWith(page, 'en', lead.done.person, NEWCOMER.secret), openDrill);
	const nobody = await at(
		async () => undefined,
		async () => undefined
	);
	return {
		...lead.done,
		inHand: supervisor.done,
		drill: newcomer.done,
		signIns: {
			lead: lead.signIn,
			supervisor: supervisor.signIn,
			trainee: trainee.signIn,
			auditor: auditor.signIn,
			proving: newcomer.signIn,
			nobody: nobody.signIn
		}
	};
}

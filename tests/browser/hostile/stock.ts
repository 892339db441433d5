import type { Actor, Actors } from './actors';

/** Work in hand of several people, so that every address can be filled with something real. */
export type Stock = {
	/** Tickets in hand of two trainees, and one of the lead that is handed in. */
	readonly practice: { readonly trainee: string; readonly other: string; readonly handedIn: string };
	readonly runs: { readonly trainee: string; readonly other: string };
	/** Drills of the other trainee's run: one that was given up, and the one that is open. */
	readonly drills: { readonly settled: string; readonly open: string };
	readonly incidents: Readonly<Record<'undecided' | 'alsoUndecided' | 'decided', string>>;
	readonly defect: string;
	readonly sheet: string;
	/** A file of a sheet the shop does not have yet. */
	readonly sheetFile: string;
	readonly values: readonly string[];
	readonly lesson: string;
	readonly rule: string;
};

/** Sends a form as a person would and answers where it led. */
async function led(
	{ browser, lang, name }: Actor,
	path: string,
	form: Record<string, string>
): Promise<string> {
	const answer = await browser.post(`/${lang}${path}`, { form, maxRedirects: 0 });
	const to = answer.headers().location;
	if (answer.status() !== 303 || !to) throw new Error(`${path} led ${name} nowhere: ${answer.status()}`);
	return to;
}

const lastOf = (address: string) =>
	address
		.replace(/[?#].*/, '')
		.split('/')
		.at(-1)!;

/** What a page links to right under a path, in the page's order. */
async function linkedFrom({ browser, lang }: Actor, page: string, under: string): Promise<string[]> {
	const html = await (await browser.get(`/${lang}${page}`)).text();
	const found = [...html.matchAll(new RegExp(`href="/${lang}${under}([^"/?#]+)"`, 'g'))].map(([, id]) => id!);
	if (found.length === 0) throw new Error(`${page} links to nothing under ${under}`);
	return found;
}

async function report(
	supervisor: Actor,
	{ defect, job, coating }: { defect: string; job: string; coating: string }
): Promise<string> {
	const on = new Date().toISOString().slice(0, 10);
	const form = { job, on, person: 'demo-aprendiz', coating, material: 'carbon-steel' };
	return lastOf(await led(supervisor, `/incidents/new?defect=${defect}`, form));
}

/** Lets the demo crew begin work, by the forms of the pages themselves. */
export async function layInStock({ trainee, supervisor, lead, ...others }: Actors): Promise<Stock> {
	const other = others['other trainee'];
	const practise = async (actor: Actor, part: string) =>
		lastOf(await led(actor, '/practice', { breadth: '1', part, support: 'full' }));
	const startRun = async (actor: Actor, competency: string) =>
		lastOf(await led(actor, '/proving', { competency, incident: '' }));

	// practice first: the book is closed to whoever has a proving drill open
	const practice = {
		trainee: await practise(trainee, 'what-went-wrong'),
		other: await practise(other, 'plan-the-passes'),
		handedIn: await practise(lead, 'whole')
	};
	await led(lead, `/practice/${practice.handedIn}?/finish`, {});
	const runs = { trainee: await startRun(trainee, 'curing'), other: await startRun(other, 'mixing') };
	const issue = async () => lastOf(await led(other, `/proving/${runs.other}`, {}));
	const settled = await issue();
	await led(other, `/proving/${runs.other}/${settled}?/giveup`, { sure: 'yes' });
	const drills = { settled, open: await issue() };

	const sheet = (await linkedFrom(lead, '/shop/sheets', '/shop/sheets/'))[0]!;
	const file = await (await lead.browser.get(`/${lead.lang}/shop/sheets/${sheet}/file`)).text();

	const defect = 'orange-peel';
	const undecided = await report(supervisor, { defect, job: 'J-1001', coating: sheet });
	const alsoUndecided = await report(supervisor, { defect, job: 'J-1003', coating: sheet });
	const decided = await report(supervisor, { defect, job: 'J-1002', coating: sheet });
	await led(supervisor, `/incidents/${decided}?/system`, {
		evidence: 'Air was wet.',
		action: 'Drain fitted.'
	});

	const values = await linkedFrom(lead, '/shop/values', '/shop/values/');
	const first = (prefix: string) => values.find((id) => id.startsWith(prefix)) ?? values[0]!;
	return {
		...{ practice, runs, drills, defect, incidents: { undecided, alsoUndecided, decided } },
		values: [first('cap.'), first('blast.pressure')],
		...{ sheet, sheetFile: file.replaceAll(`"${sheet}"`, '"demo-z-new"') },
		lesson: (await linkedFrom(trainee, '/lessons', '/lessons/'))[0]!,
		rule: (await linkedFrom(trainee, '/rules', '/rules/')).find((id) => !['numbers', 'checks'].includes(id))!
	};
}

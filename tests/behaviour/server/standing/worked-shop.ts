import { randomUUID } from 'node:crypto';
import { DEMO_SHEETS } from '$lib/engine';
import type { CompetencyId } from '$lib/learning';
import * as records from '$lib/records';
import type { App } from '$lib/server/app';
import { fillDemoShop } from '$lib/server/demo';
import { practicalBench } from '$lib/server/standing/practical-bench';
import { requirements } from '$lib/server/requirements';
import { testApp } from '../test-app';

export const LEAD = 'demo-lead';
export const SUPERVISOR = 'demo-supervisor';
export const TRAINEE = 'demo-trainee';
export const OTHER = 'demo-aprendiz';
export const AUDITOR = 'demo-auditor';

type Command<Wish> = (state: records.State, wish: Wish, acting: records.Acting) => records.Decision;

/** Does an act in the name of somebody; a refusal is a fault of the test. */
export async function act<Wish>(app: App, command: Command<Wish>, wish: Wish, actor: string): Promise<void> {
	const outcome = await app.journal.act((state, acting) => command(state, wish, acting), actor);
	if (!outcome.ok) throw new Error(`refused: ${JSON.stringify(outcome.refusal)}`);
}

/** The demo shop with its data sheets, a clock that can be moved, and nobody trained yet. */
export async function workedShop() {
	const { app, wait } = await testApp();
	await fillDemoShop(app);
	const today = records.dayOf(app.journal.state, app.now().toISOString());
	const known = app.journal.state.shop.sheets;
	for (const sheet of DEMO_SHEETS)
		if (!known.has(sheet.id))
			await act(
				app,
				records.saveSheet,
				{
					sheet: sheet.id,
					basedOn: 0,
					effective: today,
					content: JSON.parse(JSON.stringify(sheet)) as records.Json
				},
				LEAD
			);
	return { app, wait };
}

export async function doLessons(app: App, person: string, area: CompetencyId | 'safety'): Promise<void> {
	for (const lesson of requirements.lessonsOf(area))
		await act(
			app,
			records.finishLesson,
			{ lesson, lessonVersion: '1', lang: 'en', tries: { one: 1 } },
			person
		);
}

/** Issues a drill of a run; what is on its ticket does not matter here. */
export async function issue(app: App, person: string, run: string, rules = ['water-break-whole-minute']) {
	const drill = randomUUID();
	await act(
		app,
		records.issueDrill,
		{
			run,
			drill,
			kind: 'ticket-part',
			seed: drill,
			level: 1,
			engineVersion: '1',
			sheets: [],
			shopValuesHash: 'c'.repeat(64),
			ticket: {},
			asked: ['water-break-hold'],
			rules,
			expected: {}
		},
		person
	);
	return drill;
}

export interface Outcome {
	readonly right: boolean;
	readonly safetyMisses?: string[];
	readonly findings?: string[];
}

export const handIn = (
	app: App,
	person: string,
	drill: string,
	{ right, safetyMisses = [], findings = [] }: Outcome
) => act(app, records.handInDrill, { drill, answers: {}, right, safetyMisses, findings }, person);

export async function openRun(app: App, person: string, competency: string, incident: string | null = null) {
	const run = randomUUID();
	await act(app, records.openRun, { run, competency, incident }, person);
	return run;
}

/** Works a run to its verdict: the outcomes given first, then all right or all wrong. */
export async function workThrough(
	app: App,
	person: string,
	run: string,
	first: readonly Outcome[] = [],
	rest: Outcome = { right: true }
): Promise<string> {
	const { rules } = app.journal.state.attempts.runs.get(run)!;
	for (let n = 0; n < 60; n += 1) {
		const drill = await issue(app, person, run, rules.length > 0 ? [...rules] : undefined);
		await handIn(app, person, drill, first[n] ?? rest);
		if (app.journal.state.attempts.runs.get(run)?.concluded) return run;
	}
	throw new Error('no verdict after 60 drills');
}

/** Enough clean drills for the safety gate, all towards runs that pass. */
export async function clearSafety(app: App, person: string): Promise<void> {
	for (const competency of ['intake', 'mixing', 'inspection'])
		await workThrough(app, person, await openRun(app, person, competency));
}

const COATING = 'demo-a-isocyanate';

/** A practical that the lead watched, every gate met and one value in the middle of each limit. */
export async function passPractical(app: App, person: string, competency: CompetencyId): Promise<string> {
	const bench = practicalBench(app, competency, COATING)!;
	const practical = randomUUID();
	await act(
		app,
		records.recordPractical,
		{
			practical,
			person,
			competency,
			witness: LEAD,
			takenAt: app.now().toISOString(),
			sheet: bench.sheet,
			panels: ['W1', 'W2', 'W3'],
			instruments: [{ instrument: 'gauge-7', calibrationDue: '2026-12-31' }],
			gates: bench.plan.gates.map(({ id, critical }) => ({ gate: id, seen: 'met' as const, critical })),
			readings: bench.plan.readings.map(({ id, held }) => ({
				reading: id,
				unit: 'm',
				values: [((held.least ?? held.most ?? 0) + (held.most ?? held.least ?? 0)) / 2],
				least: held.least,
				most: held.most,
				accepted: true
			})),
			result: 'accepted',
			note: null,
			reason: null
		},
		LEAD
	);
	return practical;
}

/** Everything a signature in mixing needs, safety gate and all. */
export async function makeReady(app: App, person: string): Promise<void> {
	await doLessons(app, person, 'mixing');
	await clearSafety(app, person);
	await passPractical(app, person, 'mixing');
}

export const noConflict = { trained: false, lineManager: false, relative: false, paidByResult: false };

type WorkedShop = Awaited<ReturnType<typeof workedShop>>;

/** A signature in mixing by the founding lead, a minute after all it rests on. Answers its id. */
export async function makeSigned({ app, wait }: WorkedShop, person: string): Promise<string> {
	await makeReady(app, person);
	wait(60_000);
	const signOff = randomUUID();
	await act(
		app,
		records.signOff,
		{
			signOff,
			person,
			competency: 'mixing',
			conflict: noConflict,
			watchedBy: [],
			on: records.dayOf(app.journal.state, app.now().toISOString()),
			reason: null
		},
		LEAD
	);
	wait(60_000);
	return signOff;
}

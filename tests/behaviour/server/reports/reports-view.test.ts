import { isHttpError, isRedirect } from '@sveltejs/kit';
import { randomUUID } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { handInPractice } from '$lib/records';
import type { App } from '$lib/server/app';
import { forget } from '$lib/server/forget';
import { reportsView } from '$lib/server/reports/reports-view';
import { load } from '../../../../src/routes/[lang=lang]/crew/reports/+page.server';
import {
	act,
	AUDITOR,
	LEAD,
	openRun,
	OTHER,
	SUPERVISOR,
	TRAINEE,
	workedShop,
	workThrough
} from '../standing/worked-shop';
import { testEvent } from '../test-event';

const CURING = ['flash-time', 'hold-time', 'cure-part-temperature'];

interface Sheet {
	readonly rules?: string[];
	readonly findings?: string[];
	readonly seed?: string;
}

const practise = (
	app: App,
	person: string,
	{ rules = CURING, findings = [], seed = randomUUID() }: Sheet = {}
) =>
	act(
		app,
		handInPractice,
		{
			sheet: {
				attempt: randomUUID(),
				kind: 'ticket',
				seed,
				level: 1,
				engineVersion: '1',
				shopValuesHash: 'c'.repeat(64),
				rules,
				answers: {},
				hints: 0,
				right: findings.length === 0,
				findings
			},
			first: { part: 'whole', support: 'full', findings }
		},
		person
	);

async function practiseOften(app: App, count: number, sheet: Sheet = {}) {
	for (let n = 0; n < count; n += 1) await practise(app, TRAINEE, sheet);
}

const view = (app: App, person = '', lang: 'en' | 'es' = 'en') => reportsView(app, person, lang)!;
const broken = (app: App, person = '') =>
	view(app, person).stations.flatMap(({ name, rules }) =>
		rules.map(({ id, practice, proving }) => [name, id, practice, proving])
	);

describe('the rules that go wrong', () => {
	it('are counted for the crew and for one person, in the order of the work', async () => {
		const { app } = await workedShop();
		await practise(app, TRAINEE, { findings: ['hold-time'] });
		await practise(app, TRAINEE, { rules: [...CURING, 'cup-time'], findings: ['cup-time', 'hold-time'] });
		await practise(app, OTHER, { findings: ['flash-time'] });
		const none = { wrong: 0, of: 0 };
		expect(broken(app)).toEqual([
			['Mixing', 'cup-time', { wrong: 1, of: 1 }, none],
			['Curing', 'flash-time', { wrong: 1, of: 3 }, none],
			['Curing', 'hold-time', { wrong: 2, of: 3 }, none]
		]);
		expect(view(app).alwaysKept).toBe(1);
		expect(broken(app, OTHER)).toEqual([['Curing', 'flash-time', { wrong: 1, of: 1 }, none]]);
		expect(view(app, OTHER)).toMatchObject({ practice: 1, proving: 0, alwaysKept: 2 });
	});

	it('are named in the language of the reader, with the way to the lesson', async () => {
		const { app } = await workedShop();
		await practise(app, TRAINEE, { findings: ['hold-time'] });
		const [rule] = view(app, '', 'es').stations[0]!.rules;
		const [english] = view(app).stations[0]!.rules;
		expect(rule!.title).not.toBe(english!.title);
		expect(rule!.lesson).toMatch(/^\/es\/lessons\/[^#]+#/);
	});

	it('tell of a ticket only once', async () => {
		const { app } = await workedShop();
		await practise(app, TRAINEE, { findings: ['hold-time'], seed: '7' });
		await practise(app, TRAINEE, { seed: '7' });
		expect(broken(app)).toEqual([['Curing', 'hold-time', { wrong: 1, of: 1 }, { wrong: 0, of: 0 }]]);
	});

	it('tell of proving apart from practice, once there is a verdict', async () => {
		const { app } = await workedShop();
		const run = await openRun(app, TRAINEE, 'preparation');
		await workThrough(app, TRAINEE, run, [], { right: false, findings: ['water-break-whole-minute'] });
		const { drills } = app.journal.state.attempts.runs.get(run)!.concluded!;
		expect(broken(app)).toEqual([
			['Preparation', 'water-break-whole-minute', { wrong: 0, of: 0 }, { wrong: drills, of: drills }]
		]);
	});

	it('keep a place for a rule this version does not have', async () => {
		const { app } = await workedShop();
		await practise(app, TRAINEE, { rules: ['gone-rule'], findings: ['gone-rule'] });
		const [last] = view(app).stations;
		expect(last!.name).toBe('Rules this version no longer has');
		expect(last!.rules).toMatchObject([{ id: 'gone-rule', title: 'gone-rule', lesson: null }]);
	});

	it('list the crew by name, whatever went wrong, and nobody whose data was erased', async () => {
		const { app } = await workedShop();
		const names = () => view(app).people.map(({ name }) => name);
		const before = names();
		expect(before).toEqual(['Dale Whitcomb', 'Luis Paredes', 'Marta Quiroga', 'Nia Okoro']);
		await practise(app, OTHER, { findings: CURING });
		expect(names()).toEqual(before);
		await forget(app, OTHER, LEAD);
		expect(view(app)).toMatchObject({ practice: 0, stations: [] });
		expect(reportsView(app, OTHER, 'en')).toBeUndefined();
		expect(reportsView(app, AUDITOR, 'en')).toBeUndefined();
	});
});

describe('how well the rules are asked', () => {
	const flash = (app: App) => {
		const [template] = view(app).templates!;
		return template!.rules.find(({ id }) => id === 'flash-time')!.statistics;
	};

	it('is not told before 30 first attempts', async () => {
		const { app } = await workedShop();
		await practiseOften(app, 29);
		expect(flash(app)).toEqual({ refused: 'too-few', n: 29, least: 30 });
		await practiseOften(app, 1, { findings: ['flash-time'] });
		expect(flash(app)).toMatchObject({ n: 30, right: 29, indicative: true });
	});

	it('is told by the kind of ticket and the part of the work it asks about, with how many people that is', async () => {
		const { app } = await workedShop();
		await practise(app, TRAINEE);
		await practise(app, OTHER);
		await practise(app, TRAINEE, { rules: [...CURING, 'cup-time'] });
		await workThrough(app, TRAINEE, await openRun(app, TRAINEE, 'mixing'));
		const told = view(app).templates!.map(({ title, tickets, people }) => [title, tickets, people]);
		expect(told).toEqual([
			['Practice ticket: several stations', 1, 1],
			['Practice ticket: Curing', 2, 2],
			['Proving drill: Mixing', expect.any(Number), 1]
		]);
	});

	it('flags the rule that is broken by those who keep the others', async () => {
		const { app } = await workedShop();
		await practiseOften(app, 20, { findings: ['flash-time'] });
		await practiseOften(app, 20, { findings: ['hold-time', 'cure-part-temperature'] });
		expect(flash(app)).toMatchObject({ n: 40, flags: ['pull'] });
		const [template] = view(app).templates!;
		expect(template!.form).toMatchObject({ n: 40, rules: 3, betterWithout: [{ id: 'flash-time' }] });
	});

	it('is a matter of the crew, not of one person', async () => {
		const { app } = await workedShop();
		await practise(app, TRAINEE);
		expect(view(app, TRAINEE).templates).toBeUndefined();
	});
});

describe('the page', () => {
	const answer = async (person?: string, query = ''): Promise<number | string> => {
		const { app } = await workedShop();
		const event = testEvent(app, { path: `/en/crew/reports${query}`, ...(person ? { person } : {}) });
		try {
			await load(event as Parameters<typeof load>[0]);
			return 'shown';
		} catch (thrown) {
			if (isHttpError(thrown)) return thrown.status;
			if (isRedirect(thrown)) return thrown.location;
			throw thrown;
		}
	};

	it.each([SUPERVISOR, LEAD, AUDITOR])('is open to %s', async (person) => {
		expect(await answer(person)).toBe('shown');
		expect(await answer(person, `?person=${TRAINEE}`)).toBe('shown');
	});

	it('is closed to trainees, of themselves too, and to visitors', async () => {
		expect(await answer(TRAINEE)).toBe(403);
		expect(await answer(TRAINEE, `?person=${TRAINEE}`)).toBe(403);
		expect(await answer()).toMatch(/^\/en\/sign-in/);
	});

	it('knows nobody who is not there', async () => {
		expect(await answer(SUPERVISOR, '?person=nobody')).toBe(404);
	});
});

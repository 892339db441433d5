import { describe, expect, it } from 'vitest';
import { decideIncident, reportIncident, suspendSignOff } from '$lib/records';
import { todayView } from '$lib/server/standing/today-view';
import {
	act,
	doLessons,
	handIn,
	issue,
	LEAD,
	makeReady,
	makeSigned,
	openRun,
	SUPERVISOR,
	TRAINEE,
	workedShop,
	workThrough
} from './worked-shop';

const words = { text: 't-1', hash: 'a'.repeat(64), lang: 'en' as const };
const kinds = (view: ReturnType<typeof todayView>) => view.work.map(({ kind }) => kind);
const DAY = 24 * 60 * 60_000;

describe('what a person may do', () => {
	it('is nothing alone at the start, and everything supervised', async () => {
		const { app } = await workedShop();
		const { may } = todayView(app, TRAINEE, 'en');
		expect([may.alone.length, may.supervised.length, may.none.length]).toEqual([0, 6, 0]);
	});

	it('is signed work alone, supervised again once it lapses, and never while suspended', async () => {
		const shop = await workedShop();
		const { app, wait } = shop;
		const signOff = await makeSigned(shop, TRAINEE);
		expect(todayView(app, TRAINEE, 'en').may.alone).toEqual([
			{ id: 'mixing', name: 'Mixing', allowed: 'alone', because: 'signed', until: '2026-09-02' }
		]);
		wait(185 * DAY);
		const lapsed = todayView(app, TRAINEE, 'en').may;
		expect(lapsed.alone).toEqual([]);
		expect(lapsed.supervised).toContainEqual(
			expect.objectContaining({ id: 'mixing', because: 'continuity-lapsed' })
		);
		wait(-180 * DAY);
		await act(app, suspendSignOff, { signOff, reason: words }, LEAD);
		expect(todayView(app, TRAINEE, 'en').may.none).toMatchObject([{ id: 'mixing', because: 'suspended' }]);
	});
});

describe('open work', () => {
	it('begins with the lessons of every competency', async () => {
		const { app } = await workedShop();
		const view = todayView(app, TRAINEE, 'en');
		expect(kinds(view)).toEqual(Array.from({ length: 6 }, () => 'lessons'));
	});

	it('goes on to proving, and leads back into an open run and drill', async () => {
		const { app } = await workedShop();
		await doLessons(app, TRAINEE, 'mixing');
		const mixing = () =>
			todayView(app, TRAINEE, 'en').work.find((work) => work.kind === 'proving' && work.area === 'mixing');
		expect(mixing()).toMatchObject({ begun: false, waits: null, href: '/en/proving' });
		const run = await openRun(app, TRAINEE, 'mixing');
		expect(mixing()).toMatchObject({ begun: true, href: `/en/proving/${run}` });
		const drill = await issue(app, TRAINEE, run);
		expect(todayView(app, TRAINEE, 'en').work[0]).toEqual({
			kind: 'drill',
			href: `/en/proving/${run}/${drill}`
		});
	});

	it('says when a failed run may be tried again, and that lessons come first', async () => {
		const { app } = await workedShop();
		await doLessons(app, TRAINEE, 'mixing');
		await workThrough(app, TRAINEE, await openRun(app, TRAINEE, 'mixing'), [], { right: false });
		const { work } = todayView(app, TRAINEE, 'en');
		expect(work.find(({ kind }) => kind === 'proving')).toMatchObject({
			waits: { days: '2026-03-09', lessons: true, newApplication: null }
		});
	});

	it('waits for a signature when everything is there', async () => {
		const { app } = await workedShop();
		await makeReady(app, TRAINEE);
		expect(todayView(app, TRAINEE, 'en').work).toContainEqual({
			kind: 'signature',
			competency: 'Mixing',
			area: 'mixing'
		});
	});

	it('asks for the safety lessons after a second safety stop, never saying where it was', async () => {
		const { app } = await workedShop();
		const miss = { right: false, safetyMisses: ['bonded-pouring'] };
		const run = await openRun(app, TRAINEE, 'mixing');
		for (let n = 0; n < 2; n += 1) {
			const before = todayView(app, TRAINEE, 'en').safety.text;
			expect(before).not.toMatch(/stop/i);
			const drill = await issue(app, TRAINEE, run);
			await handIn(app, TRAINEE, drill, miss);
		}
		const view = todayView(app, TRAINEE, 'en');
		expect(view.safety.state).toBe('stopped');
		expect(view.work[0]).toMatchObject({ kind: 'safety-lessons' });
	});
});

it('names a refresher with the lesson sections of exactly its rules', async () => {
	const shop = await workedShop();
	const { app } = shop;
	await makeSigned(shop, TRAINEE);
	await act(
		app,
		reportIncident,
		{ incident: 'inc-1', defect: 'soft-film', job: 'J-1', person: TRAINEE, conditions: {}, note: null },
		SUPERVISOR
	);
	await act(
		app,
		decideIncident,
		{
			incident: 'inc-1',
			cause: 'skill-gap',
			evidence: words,
			competency: 'mixing',
			rules: ['stir-time', 'hardener-by-weight']
		},
		SUPERVISOR
	);
	const { may, work } = todayView(app, TRAINEE, 'en');
	expect(may.alone).toEqual([]);
	expect(may.supervised).toContainEqual(expect.objectContaining({ id: 'mixing', because: 'refresher-due' }));
	expect(work[0]).toMatchObject({
		kind: 'refresher',
		competency: 'Mixing',
		defect: 'Soft film, under-cure',
		proven: false
	});
	const [refresher] = work;
	const links = refresher?.kind === 'refresher' ? refresher.sections.map(({ href }) => href) : [];
	expect(links).toEqual(['/en/lessons/measuring#stir-time', '/en/lessons/measuring#hardener-by-weight']);
});

it('keeps dates in order and gives notice of those that come near', async () => {
	const shop = await workedShop();
	const { app, wait } = shop;
	await makeSigned(shop, TRAINEE);
	const dates = () =>
		todayView(app, TRAINEE, 'en').dates.map(({ what, soon, past }) => ({ what, soon, past }));
	expect(dates()[0]).toEqual({ what: 'continuity', soon: false, past: false });
	wait(130 * DAY);
	expect(dates()[0]).toEqual({ what: 'continuity', soon: true, past: false });
	wait(60 * DAY);
	expect(dates()[0]).toEqual({ what: 'continuity', soon: false, past: true });
});

import { expect, it } from 'vitest';
import { METRIC } from '$lib/engine';
import { personView } from '$lib/server/standing/person-view';
import { requireReaderOf } from '$lib/server/standing/reader-of-person';
import { signOffSheet } from '$lib/server/standing/sheet-page';
import { testEvent } from '../test-event';
import {
	AUDITOR,
	handIn,
	issue,
	LEAD,
	makeSigned,
	openRun,
	OTHER,
	SUPERVISOR,
	TRAINEE,
	workedShop
} from './worked-shop';

const reader = { lang: 'en', units: METRIC } as const;
const statusOf = (read: () => unknown): number => {
	try {
		read();
		return 200;
	} catch (error) {
		return (error as { status: number }).status;
	}
};

it('is read by the person, supervisors, leads and an admitted auditor', async () => {
	const { app } = await workedShop();
	const asked = (person: string, whose = TRAINEE) =>
		statusOf(() => requireReaderOf(testEvent(app, { person }), whose));
	expect([TRAINEE, SUPERVISOR, LEAD, AUDITOR].map((person) => asked(person))).toEqual([200, 200, 200, 200]);
	expect(asked(OTHER)).toBe(403);
	expect(asked(LEAD, 'nobody')).toBe(404);
});

it('shows the person no outcome of a drill whose run is open', async () => {
	const { app } = await workedShop();
	const run = await openRun(app, TRAINEE, 'mixing');
	const drill = await issue(app, TRAINEE, run);
	await handIn(app, TRAINEE, drill, {
		right: false,
		findings: ['stir-time'],
		safetyMisses: ['bonded-pouring']
	});
	const view = personView(app, TRAINEE, TRAINEE, reader);
	expect(view.areas.find(({ id }) => id === 'mixing')?.runs).toMatchObject([
		{ handedIn: 1, verdict: null, means: [] }
	]);
	expect(JSON.stringify(view)).not.toMatch(/stir-time|bonded-pouring/);
	expect(view.safety.text).toBe(
		'Open, after 1 proving drill. What was found in them comes with the verdict.'
	);
});

it('tells history from the record, the latest first', async () => {
	const shop = await workedShop();
	const { app } = shop;
	await makeSigned(shop, TRAINEE);
	const mixing = personView(app, TRAINEE, LEAD, reader).areas.find(({ id }) => id === 'mixing');
	expect(mixing?.history.map(({ event }) => event)).toEqual([
		'signoff.granted',
		'practical.recorded',
		'proving.concluded',
		'proving.opened',
		'training.started'
	]);
	expect(mixing?.signOffs[0]).toMatchObject({
		signer: 'Marta Quiroga',
		flags: ['founding-lead'],
		watchedBy: [],
		meaning: 'approved'
	});
});

it('prints the last hash of the record, and for one competency only it', async () => {
	const shop = await workedShop();
	const { app } = shop;
	await makeSigned(shop, TRAINEE);
	const all = signOffSheet(app, TRAINEE, null, reader);
	expect(all.head).toEqual(app.journal.head);
	expect(all.sheets.map(({ id }) => id)).toEqual(['mixing']);
	expect(all.sheets[0]?.verdict).toMatchObject({ drills: 12 });
	expect(signOffSheet(app, TRAINEE, 'curing', reader).sheets).toEqual([]);
	expect(signOffSheet(app, OTHER, null, reader).sheets).toEqual([]);
});

import { describe, expect, it } from 'vitest';
import { METRIC } from '$lib/engine';
import { signOffPage } from '$lib/server/standing/sign-off-page';
import type { App } from '$lib/server/app';
import {
	doLessons,
	handIn,
	issue,
	LEAD,
	makeReady,
	makeSigned,
	openRun,
	passPractical,
	SUPERVISOR,
	TRAINEE,
	workedShop,
	workThrough
} from './worked-shop';

const reader = { lang: 'en', units: METRIC } as const;
const page = (app: App, signer = LEAD, person = TRAINEE) =>
	signOffPage(app, { person, competency: 'mixing', incident: null }, signer, reader);

describe('the drill log', () => {
	it('is nowhere before the verdict, and whole after it', async () => {
		const { app } = await workedShop();
		const run = await openRun(app, TRAINEE, 'mixing');
		const first = await issue(app, TRAINEE, run);
		await handIn(app, TRAINEE, first, { right: false, findings: ['stir-time'] });
		expect(JSON.stringify(page(app))).not.toContain(first);
		await workThrough(app, TRAINEE, run);
		const log = page(app).run?.log ?? [];
		expect(log).toHaveLength(17);
		expect(log[0]).toMatchObject({
			id: first,
			right: false,
			breached: [{ id: 'stir-time', title: expect.stringContaining(' ') as string }]
		});
		expect(log.slice(1).every(({ right }) => right)).toBe(true);
	});

	it('keeps the id of a rule this engine does not know', async () => {
		const { app } = await workedShop();
		const run = await openRun(app, TRAINEE, 'mixing');
		await workThrough(app, TRAINEE, run, [{ right: false, findings: ['rule-of-old'] }]);
		expect(page(app).run?.log?.[0]?.breached).toEqual([{ id: 'rule-of-old', title: 'rule-of-old' }]);
	});
});

describe('whether it can be signed', () => {
	it('names what is missing', async () => {
		const { app } = await workedShop();
		expect(page(app).against).toMatchObject({
			code: 'parts-missing',
			detail: ['lessons', 'verdict', 'safety-gate', 'practical']
		});
		await doLessons(app, TRAINEE, 'mixing');
		expect(page(app).against?.detail).toEqual(['verdict', 'safety-gate', 'practical']);
	});

	it('is for whoever is signed for it, never for oneself', async () => {
		const { app } = await workedShop();
		await makeReady(app, TRAINEE);
		expect(page(app).against).toBeNull();
		expect(page(app, SUPERVISOR).against?.code).toBe('not-signed-for-it');
		expect(page(app, LEAD, LEAD).against?.code).toBe('own-record');
	});
});

it('asks for a reason when a safety stop came after the gate was passed', async () => {
	const { app } = await workedShop();
	await makeReady(app, TRAINEE);
	expect(page(app).passedOver).toEqual([]);
	const run = await openRun(app, TRAINEE, 'curing');
	await handIn(app, TRAINEE, await issue(app, TRAINEE, run), {
		right: false,
		safetyMisses: ['bonded-pouring']
	});
	expect(page(app).passedOver).toEqual(['safety-misses-since-pass']);
});

it('names other evidence by another fingerprint', async () => {
	const { app } = await workedShop();
	await makeReady(app, TRAINEE);
	const before = page(app).seen;
	expect(page(app).seen).toBe(before);
	await passPractical(app, TRAINEE, 'mixing');
	expect(page(app).seen).not.toBe(before);
});

it('counts no part twice: after a signature the next one needs a new run and practical', async () => {
	const shop = await workedShop();
	const { app } = shop;
	await makeSigned(shop, TRAINEE);
	expect(page(app).against).toMatchObject({ detail: ['verdict', 'practical'] });
	expect(page(app).run).toBeNull();
});

import { beforeAll, afterAll, describe, expect, test } from 'vitest';
import { METRIC, rightAnswers } from '$lib/engine';
import type { Reader } from '$lib/paper';
import type { App } from '$lib/server/app';
import { practiceDraft, type PracticeDraft } from '$lib/server/practice/draft';
import { gunBenchView, hasGunBench } from '$lib/server/practice/gun-bench';
import { issuePractice } from '$lib/server/practice/issue';
import { shopInForce } from '$lib/server/shop-in-force';
import { GET } from '../../../../src/routes/[lang=lang]/practice/[attempt]/film-map/+server';
import { SUPERVISOR, TRAINEE, workedShop } from '../standing/worked-shop';
import { testEvent } from '../test-event';

const reader: Reader = { lang: 'en', units: METRIC };
const asked = {
	'gun-distance': '100 mm',
	'fan-width': '4 in',
	overlap: '50 %',
	'gun-speed': '0.3 m/s',
	coats: '2',
	flow: '60 mL/min'
};

let app: App;
let draft: PracticeDraft;
beforeAll(async () => {
	({ app } = await workedShop());
	const wish = { part: 'plan-the-passes', breadth: 1, support: 'full', chosen: null } as const;
	draft = practiceDraft(app, TRAINEE, (await issuePractice(app, TRAINEE, wish))!)!;
});
afterAll(() => app.close());

async function get(
	over: Partial<Record<keyof typeof asked, string>>,
	person?: string,
	attempt = draft.attempt
) {
	const query = new URLSearchParams({ ...asked, ...over });
	const event = testEvent(app, { path: `/en/practice/${attempt}/film-map?${query}`, person });
	const answer = await GET({ ...event, params: { lang: 'en', attempt } } as never);
	return { status: answer.status, body: (await answer.json()) as Record<string, unknown> };
}

describe('a film map asked for', () => {
	test('is answered with what is drawn, in the reader’s units', async () => {
		const { status, body } = await get({}, TRAINEE);
		expect(status).toBe(200);
		expect(body.map).toMatchObject({ bands: expect.any(Array), curve: expect.any(Array) });
		expect(JSON.stringify(body.map)).toContain('mil');
	});

	test.each([
		['gun-distance', '100 psi'],
		['gun-speed', 'fast'],
		['coats', ''],
		['flow', '60']
	] as const)('is refused where %s is typed as “%s”, by name', async (control, text) => {
		const { status, body } = await get({ [control]: text }, TRAINEE);
		expect(status).toBe(400);
		expect(body).toEqual({ map: null, control, problem: expect.any(String) });
	});

	test('is nobody else’s', async () => {
		await expect(get({}, SUPERVISOR)).rejects.toMatchObject({ status: 404 });
		await expect(get({}, TRAINEE, 'other')).rejects.toMatchObject({ status: 404 });
		await expect(get({})).rejects.toMatchObject({ status: 303 });
	});

	test('belongs to its own drill alone', () => {
		expect(hasGunBench(draft)).toBe(true);
		expect(hasGunBench({ ...draft, part: 'mix-the-batch' })).toBe(false);
	});
});

describe('the bench beside the sheet', () => {
	const bench = (over: Partial<PracticeDraft>, flow: string | null = null) =>
		gunBenchView({ ...draft, ...over }, shopInForce(app, draft.job.on).shop, reader, flow);
	const entries = () =>
		Object.fromEntries(Object.entries(rightAnswers(draft.plan)).map(([id, answer]) => [id, { answer }]));

	test('asks for the numbers first', () => {
		expect(bench({})).toMatchObject({ map: null, missing: expect.stringContaining('Draw the film') });
	});

	test('draws what is in the sheet, with the flow of the bench or the one typed', () => {
		const mean = (flow: string | null) => {
			const { map, missing } = bench({ entries: entries() }, flow);
			expect(missing).toBeNull();
			return parseFloat(map!.numbers.find(({ id }) => id === 'mean')!.value);
		};
		expect(mean('50 mL/min') / mean(null)).toBeCloseTo(0.5, 1);
		expect(bench({ entries: entries() }, '5 psi').missing).toMatch(/Fluid flow/);
		expect(bench({ entries: entries() }, '5 psi').flow.value).toBe('5 psi');
	});

	test('counts as in the sheet what the drill filled in itself', () => {
		const given = draft.plan.fields.map(({ field }) => field);
		expect(bench({ given }).map).not.toBeNull();
	});

	test('is plain data', () => {
		const view = bench({ entries: entries() });
		expect(JSON.parse(JSON.stringify(view))).toEqual(view);
	});
});

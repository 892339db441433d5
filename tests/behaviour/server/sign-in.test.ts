import { describe, expect, it } from 'vitest';
import { crewAtTheDoor } from '$lib/server/crew-at-the-door';
import { fillDemoShop } from '$lib/server/demo';
import { recognise } from '$lib/server/request/recognise';
import { SESSION_COOKIE } from '$lib/server/session-cookie';
import { setSecret } from '$lib/server/set-secret';
import { signInAs, signOut } from '$lib/server/sign-in';
import type { App } from '$lib/server/app';
import { testApp } from './test-app';
import { testEvent } from './test-event';

const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;

const demo = async () => {
	const made = await testApp();
	await fillDemoShop(made.app);
	return made;
};

/** Who a later request with the same cookies is taken for. */
const seenAs = async (app: App, cookies: Map<string, string>) => {
	const event = testEvent(app, { cookies });
	await recognise({ event, resolve: () => new Response() });
	return { id: event.locals.who?.id ?? null, lapsed: event.locals.lapsed };
};

const tryAs = (
	app: App,
	person: string,
	secret: string,
	cookies = new Map<string, string>(),
	address?: string
) => signInAs(testEvent(app, { cookies, ...(address && { address }) }), person, secret);

describe('signing in', () => {
	it('makes later requests the person’s', async () => {
		const { app } = await demo();
		const cookies = new Map<string, string>();
		expect(await tryAs(app, 'demo-trainee', '2580', cookies)).toBeNull();
		expect(await seenAs(app, cookies)).toEqual({ id: 'demo-trainee', lapsed: false });
	});

	it('of another person at the same PC replaces the first under a new id', async () => {
		const { app } = await demo();
		const cookies = new Map<string, string>();
		await tryAs(app, 'demo-trainee', '2580', cookies);
		const first = new Map(cookies);
		await tryAs(app, 'demo-supervisor', 'grey masking tape', cookies);
		expect(cookies.get(SESSION_COOKIE)).not.toBe(first.get(SESSION_COOKIE));
		expect((await seenAs(app, cookies)).id).toBe('demo-supervisor');
		expect((await seenAs(app, first)).id).toBeNull();
	});

	it('ends by itself when unused, and says so', async () => {
		const { app, wait } = await demo();
		const cookies = new Map<string, string>();
		await tryAs(app, 'demo-trainee', '2580', cookies);
		wait(14 * MINUTE);
		expect((await seenAs(app, cookies)).id).toBe('demo-trainee');
		wait(15 * MINUTE);
		expect(await seenAs(app, cookies)).toEqual({ id: null, lapsed: true });
	});

	it('ends on request, for a copied cookie too', async () => {
		const { app } = await demo();
		const cookies = new Map<string, string>();
		await tryAs(app, 'demo-trainee', '2580', cookies);
		const copy = new Map(cookies);
		signOut(testEvent(app, { cookies }));
		expect(cookies.size).toBe(0);
		expect((await seenAs(app, copy)).id).toBeNull();
	});

	it('with a made-up cookie is nobody', async () => {
		const { app } = await demo();
		const cookies = new Map([[SESSION_COOKIE, 'x.y']]);
		expect(await seenAs(app, cookies)).toEqual({ id: null, lapsed: false });
	});
});

describe('a wrong secret', () => {
	it('opens nothing and is entered in the journal, without what was typed', async () => {
		const { app } = await demo();
		const cookies = new Map<string, string>();
		expect(await tryAs(app, 'demo-trainee', '8520', cookies)).toEqual({ reason: 'wrong' });
		expect(cookies.size).toBe(0);
		const entry = app.journal.entries.at(-1);
		expect(entry).toMatchObject({
			actor: 'program',
			event: 'act.refused',
			data: { what: 'sign-in', code: 'wrong-secret', person: 'demo-trainee' }
		});
		expect(JSON.stringify(entry)).not.toContain('8520');
	});

	it('makes the next try wait, even the right one, and waiting tries fill no journal', async () => {
		const { app, wait } = await demo();
		for (let i = 0; i < 3; i++) await tryAs(app, 'demo-trainee', '8520');
		const before = app.journal.head;
		expect(await tryAs(app, 'demo-trainee', '2580')).toEqual({ reason: 'wait', seconds: 5 });
		expect(app.journal.head).toEqual(before);
		wait(4999);
		expect(await tryAs(app, 'demo-trainee', '2580')).toEqual({ reason: 'wait', seconds: 1 });
		wait(1);
		expect(await tryAs(app, 'demo-trainee', '2580')).toBeNull();
	});

	it('sent many times at once is still looked at only three times', async () => {
		const { app } = await demo();
		const pins = Array.from({ length: 40 }, (_, i) => String(3000 + i));
		const answers = await Promise.all(pins.map((pin) => tryAs(app, 'demo-trainee', pin)));
		expect(answers.filter((answer) => answer?.reason === 'wrong')).toHaveLength(3);
		expect(answers.filter((answer) => answer?.reason === 'wait')).toHaveLength(37);
	});

	it('of one person does not hold up another, until the address has too many', async () => {
		const { app } = await demo();
		for (let i = 0; i < 3; i++) await tryAs(app, 'demo-trainee', '8520');
		expect(await tryAs(app, 'demo-aprendiz', '7419')).toBeNull();
		const others = ['demo-lead', 'demo-supervisor', 'demo-auditor', 'nobody'];
		for (const person of others) for (let i = 0; i < 3; i++) await tryAs(app, person, 'not this one');
		expect(await tryAs(app, 'demo-aprendiz', '7419')).toMatchObject({ reason: 'wait' });
		expect(await tryAs(app, 'demo-aprendiz', '7419', undefined, '192.0.2.8')).toBeNull();
	});

	it('for somebody who is not there is refused like any other', async () => {
		const { app } = await demo();
		expect(await tryAs(app, 'nobody', '2580')).toEqual({ reason: 'wrong' });
		expect(app.journal.entries.at(-1)).toMatchObject({ data: { person: null } });
	});
});

describe('an auditor', () => {
	it('is at the door only while their access is open, and is put out when it ends', async () => {
		const { app, wait } = await demo();
		const cookies = new Map<string, string>();
		await tryAs(app, 'demo-auditor', 'red ledger page two', cookies);
		wait(30 * DAY);
		expect(crewAtTheDoor(app, 'en').map(({ id }) => id)).not.toContain('demo-auditor');
		expect((await seenAs(app, cookies)).id).toBeNull();
		expect(await tryAs(app, 'demo-auditor', 'red ledger page two')).toEqual({ reason: 'wrong' });
	});
});

describe('a new secret', () => {
	it('replaces the old one, ends sign-ins and is noted with who set it', async () => {
		const { app } = await demo();
		const cookies = new Map<string, string>();
		await tryAs(app, 'demo-trainee', '2580', cookies);
		const outcome = await setSecret(app, { person: 'demo-trainee', secret: '9037' }, 'demo-lead');
		expect(outcome.ok).toBe(true);
		expect(app.journal.entries.at(-1)).toMatchObject({
			actor: 'demo-lead',
			event: 'person.secret-set',
			data: { person: 'demo-trainee' }
		});
		expect((await seenAs(app, cookies)).id).toBeNull();
		expect(await tryAs(app, 'demo-trainee', '2580')).toEqual({ reason: 'wrong' });
		expect(await tryAs(app, 'demo-trainee', '9037')).toBeNull();
	});

	it('is set by nobody but the person or a lead', async () => {
		const { app } = await demo();
		const wish = { person: 'demo-lead', secret: 'mine from now on' };
		for (const actor of ['demo-trainee', 'demo-supervisor', 'demo-auditor', 'nobody'])
			expect(await setSecret(app, wish, actor), actor).toMatchObject({ refusal: { code: 'not-allowed' } });
		expect(await app.secrets.verify('demo-lead', 'nine copper racks')).toBe(true);
	});
});

import { describe, expect, test } from 'vitest';
import {
	addPerson,
	erasePerson,
	foundShop,
	Journal,
	mayAct,
	noteSecret,
	openAuditor,
	refreshersDue,
	rolesAt,
	setRoles,
	type Json
} from '$lib/records';
import { defaultScheme } from '$lib/learning';
import { Memory } from 'lowdb';
import { codeOf, requirements, testShop, words } from '../test-shop';
import { doLessons, practical } from '../working-towards';
import { recordPractical } from '$lib/records';

const founding = {
	name: words('t-shop'),
	timeZone: 'America/Denver',
	demo: false,
	leadName: words('t-lead'),
	lang: 'en' as const,
	scheme: defaultScheme as unknown as Json
};

const emptyJournal = () =>
	Journal.open(new Memory<string[]>(), { clock: () => new Date('2026-03-02T04:00:00Z'), requirements });

describe('founding the shop', () => {
	test('makes the actor the founding lead, in the time zone of the shop', async () => {
		const journal = await emptyJournal();
		await journal.act((state, acting) => foundShop(state, founding, acting), 'lead-1');
		expect(journal.state.shop.founded).toMatchObject({ lead: 'lead-1', on: '2026-03-01', demo: false });
		expect(rolesAt(journal.state, 'lead-1', '2026-03-02T04:00:00.000Z')).toEqual([
			'lead',
			'supervisor',
			'trainee'
		]);
		expect(journal.state.shop.schemes).toHaveLength(1);
	});

	test('is done once', async () => {
		const shop = await testShop();
		expect(codeOf(shop.ask(foundShop, founding, 'lead-2'))).toBe('already-founded');
	});

	test('takes a time zone that exists and a scheme that holds together', async () => {
		const { state } = await emptyJournal();
		const acting = { actor: 'lead-1', now: '2026-03-02T04:00:00.000Z', requirements };
		expect(codeOf(foundShop(state, { ...founding, timeZone: 'Mars/Olympus' }, acting))).toBe(
			'unknown-time-zone'
		);
		const scheme = {
			...defaultScheme,
			sequential: { ...defaultScheme.sequential, p0: 0.95 }
		} as unknown as Json;
		expect(foundShop(state, { ...founding, scheme }, acting)).toMatchObject({
			ok: false,
			refusal: { code: 'malformed', field: expect.stringContaining('sequential') }
		});
	});
});

describe('adding people', () => {
	const ann = { person: 'ann', name: words('t-ann'), roles: ['trainee' as const], lang: 'es' as const };

	test('is for a lead', async () => {
		const shop = await testShop();
		for (const actor of ['sup-1', 'trn-1', 'nobody'])
			expect(codeOf(shop.ask(addPerson, ann, actor))).toBe('not-allowed');
		expect(codeOf(shop.ask(addPerson, ann, 'lead-1'))).toBe('accepted');
	});

	test('gives each id once', async () => {
		const shop = await testShop();
		expect(codeOf(shop.ask(addPerson, { ...ann, person: 'trn-1' }, 'lead-1'))).toBe('id-taken');
	});

	test('starts training in all areas, for everybody but an auditor', async () => {
		const shop = await testShop();
		await shop.do(addPerson, ann, 'lead-1');
		await shop.do(addPerson, { ...ann, person: 'aud', roles: ['auditor'] }, 'lead-1');
		expect(shop.state.training.has('ann curing')).toBe(true);
		expect(shop.state.training.has('ann safety')).toBe(true);
		expect(shop.state.training.has('aud curing')).toBe(false);
		expect(codeOf(shop.ask(addPerson, { ...ann, person: 'x', roles: ['auditor', 'lead'] }, 'lead-1'))).toBe(
			'malformed'
		);
	});

	test('needs at least one role', async () => {
		const shop = await testShop();
		expect(codeOf(await shop.try(addPerson, { ...ann, roles: [] }, 'lead-1'))).toBe('malformed');
	});
});

describe('roles', () => {
	test('a lead may do what a supervisor may, and not the other way round', async () => {
		const shop = await testShop();
		expect(mayAct(shop.state, 'lead-1', 'supervisor', shop.now)).toBe(true);
		expect(mayAct(shop.state, 'sup-1', 'lead', shop.now)).toBe(false);
	});

	test('the last lead stays one', async () => {
		const shop = await testShop();
		expect(codeOf(shop.ask(setRoles, { person: 'lead-1', roles: ['trainee'] }, 'lead-1'))).toBe('last-lead');
		await shop.do(setRoles, { person: 'sup-1', roles: ['lead'] }, 'lead-1');
		expect(codeOf(shop.ask(setRoles, { person: 'lead-1', roles: ['trainee'] }, 'lead-1'))).toBe('accepted');
	});

	test('are set by a lead, for a person there is, and not to or from auditor', async () => {
		const shop = await testShop();
		expect(codeOf(shop.ask(setRoles, { person: 'trn-1', roles: ['lead'] }, 'trn-1'))).toBe('not-allowed');
		expect(codeOf(shop.ask(setRoles, { person: 'ghost', roles: ['lead'] }, 'lead-1'))).toBe('unknown-person');
		expect(codeOf(shop.ask(setRoles, { person: 'trn-1', roles: ['auditor'] }, 'lead-1'))).toBe('malformed');
	});
});

describe('secrets', () => {
	test('are noted as set, by oneself or a lead', async () => {
		const shop = await testShop();
		expect(codeOf(shop.ask(noteSecret, { person: 'trn-1' }, 'sup-1'))).toBe('not-allowed');
		await shop.do(noteSecret, { person: 'trn-1' }, 'trn-1');
		const [entry] = await shop.do(noteSecret, { person: 'trn-1' }, 'lead-1');
		expect(entry?.data).toEqual({ person: 'trn-1' });
		expect(shop.state.people.get('trn-1')?.secretSetAt).toBe(shop.now);
	});
});

describe('an auditor', () => {
	test('sees the record only until the moment a lead set', async () => {
		const shop = await testShop();
		await shop.do(
			addPerson,
			{ person: 'aud', name: words('t-aud'), roles: ['auditor'], lang: 'en' },
			'lead-1'
		);
		expect(rolesAt(shop.state, 'aud', shop.now)).toEqual([]);
		const until = new Date(Date.parse(shop.now) + 3_600_000).toISOString();
		expect(codeOf(shop.ask(openAuditor, { person: 'aud', until }, 'sup-1'))).toBe('not-allowed');
		await shop.do(openAuditor, { person: 'aud', until }, 'lead-1');
		expect(rolesAt(shop.state, 'aud', shop.now)).toEqual(['auditor']);
		shop.pass({ hours: 1 });
		expect(rolesAt(shop.state, 'aud', shop.now)).toEqual([]);
	});

	test('is not opened for the past, for good, or for somebody who works here', async () => {
		const shop = await testShop();
		await shop.do(
			addPerson,
			{ person: 'aud', name: words('t-aud'), roles: ['auditor'], lang: 'en' },
			'lead-1'
		);
		const ask = (person: string, until: string) => codeOf(shop.ask(openAuditor, { person, until }, 'lead-1'));
		expect(ask('aud', '2026-01-01T00:00:00.000Z')).toBe('backdated');
		expect(ask('aud', '2027-01-01T00:00:00.000Z')).toBe('malformed');
		for (const until of ['soon', '', '2026-03-31', '2026-13-41T00:00:00.000Z', '9'])
			expect(ask('aud', until)).toBe('malformed');
		expect(ask('ghost', '2026-03-05T00:00:00.000Z')).toBe('unknown-person');
		expect(ask('trn-1', '2026-03-05T00:00:00.000Z')).toBe('malformed');
	});
});

describe('erasing', () => {
	test('names every text about the person, and nobody else', async () => {
		const shop = await testShop();
		await doLessons(shop, 'trn-1', 'mixing');
		const wish = practical(shop, 'trn-1', 'mixing', 'lead-1');
		await shop.do(recordPractical, wish, 'lead-1');
		await shop.do(erasePerson, { person: 'trn-1' }, 'lead-1');
		expect([...shop.state.texts.erased]).toEqual([
			['t-trn-1', shop.now],
			[wish.note!.text, shop.now]
		]);
	});

	test('leaves the entries, and the person without a part in the shop', async () => {
		const shop = await testShop();
		const before = shop.journal.entries.length;
		await shop.do(erasePerson, { person: 'trn-1' }, 'lead-1');
		expect(shop.journal.entries).toHaveLength(before + 1);
		expect(shop.state.people.get('trn-1')?.erasedAt).toBe(shop.now);
		expect(rolesAt(shop.state, 'trn-1', shop.now)).toEqual([]);
		expect(refreshersDue(shop.state, 'trn-1')).toEqual([]);
		expect(codeOf(shop.ask(erasePerson, { person: 'trn-1' }, 'lead-1'))).toBe('person-erased');
	});

	test('is for a lead, and not of the last lead', async () => {
		const shop = await testShop();
		expect(codeOf(shop.ask(erasePerson, { person: 'trn-1' }, 'sup-1'))).toBe('not-allowed');
		expect(codeOf(shop.ask(erasePerson, { person: 'lead-1' }, 'lead-1'))).toBe('last-lead');
	});
});

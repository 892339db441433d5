import { isHttpError } from '@sveltejs/kit';
import { describe, expect, it } from 'vitest';
import { rolesAt } from '$lib/records';
import { addToShop } from '$lib/server/shop/people/add-to-shop';
import { changeRoles } from '$lib/server/shop/people/change-roles';
import { eraseFromShop } from '$lib/server/shop/people/erase';
import { giveSecret } from '$lib/server/shop/people/give-secret';
import { openAccess } from '$lib/server/shop/people/open-access';
import { peopleList } from '$lib/server/shop/people/people-list';
import { answered, demoShop, posted } from './in-the-shop';

const NEW = { name: 'Rosa Ibarra', roles: ['trainee'], lang: 'es', secret: '4826', again: '4826' };
const PHRASE = 'seven brass hooks';

describe('adding a person', () => {
	it('lets them sign in, in training, and leads to their page', async () => {
		const { app } = await demoShop();
		const { to } = await answered(addToShop(posted(app, NEW)));
		const id = /people\/([^?]+)\?done=added$/.exec(to ?? '')![1]!;
		expect(await app.secrets.verify(id, '4826')).toBe(true);
		expect(app.journal.state.people.get(id)).toMatchObject({ roles: ['trainee'], lang: 'es' });
		expect(peopleList(app, 'en').map(({ name }) => name)).toContain('Rosa Ibarra');
	});

	it.each([
		[{ name: ' ' }, ['name']],
		[{ name: 'x'.repeat(201) }, ['name']],
		[{ roles: [] }, ['roles']],
		[{ roles: ['janitor'] }, ['roles']],
		[{ roles: ['auditor', 'lead'] }, ['roles']],
		[{ lang: 'fr' }, ['lang']],
		[{ secret: '1234', again: '1234' }, ['secret']],
		[{ secret: '4826', again: '4827' }, ['again']],
		[{ roles: ['supervisor'] }, ['secret']],
		[{ name: '', lang: '', secret: '' }, ['lang', 'name', 'secret']]
	])('%j is sent back at its field, with what was typed but the secret', async (change, fields) => {
		const { app } = await demoShop();
		const before = app.journal.head.hash;
		const { status, data } = await answered(addToShop(posted(app, { ...NEW, ...change })));
		expect(status).toBe(400);
		expect(Object.keys(data!.problems).sort()).toEqual(fields);
		expect(data!.kept).toHaveProperty('name');
		expect(JSON.stringify(data)).not.toContain('4826');
		expect(app.journal.head.hash).toBe(before);
	});

	it('is the lead’s alone', async () => {
		const { app } = await demoShop();
		for (const person of ['demo-supervisor', 'demo-trainee', 'demo-auditor'])
			try {
				await addToShop(posted(app, NEW, { person }));
				expect.unreachable();
			} catch (thrown) {
				expect(isHttpError(thrown, 403), person).toBe(true);
			}
	});
});

describe('changing what a person may do', () => {
	it('gives nobody a signature behind a PIN', async () => {
		const { app } = await demoShop();
		const wish = { roles: ['trainee', 'supervisor'] };
		const refused = await answered(changeRoles(posted(app, wish), 'demo-trainee'));
		expect(Object.keys(refused.data!.problems)).toEqual(['secret']);
		expect(app.journal.state.people.get('demo-trainee')?.roles).toEqual(['trainee']);

		const { to } = await answered(
			changeRoles(posted(app, { ...wish, secret: PHRASE, again: PHRASE }), 'demo-trainee')
		);
		expect(to).toContain('done=roles');
		expect(await app.secrets.verify('demo-trainee', '2580')).toBe(false);
		expect(await app.secrets.verify('demo-trainee', PHRASE)).toBe(true);
	});

	it('leaves the secret alone where its kind stays', async () => {
		const { app } = await demoShop();
		const { to } = await answered(
			changeRoles(posted(app, { roles: ['supervisor', 'lead'] }), 'demo-supervisor')
		);
		expect(to).toContain('done=roles');
		expect(await app.secrets.verify('demo-supervisor', 'grey masking tape')).toBe(true);
	});

	it('keeps a lead in the shop, and says so at the field', async () => {
		const { app } = await demoShop();
		const { status, data } = await answered(changeRoles(posted(app, { roles: ['supervisor'] }), 'demo-lead'));
		expect(status).toBe(409);
		expect(data!.problems.roles).toMatch(/without a lead/);
	});

	it('does not touch a secret when the record refuses the roles', async () => {
		const { app } = await demoShop();
		const wish = { roles: ['trainee'], secret: '4826', again: '4826' };
		const { status } = await answered(changeRoles(posted(app, wish), 'demo-lead'));
		expect(status).toBe(409);
		expect(await app.secrets.verify('demo-lead', 'nine copper racks')).toBe(true);
	});

	it('answers an id that is nobody’s with 404', async () => {
		const { app } = await demoShop();
		for (const action of [
			changeRoles(posted(app, { roles: ['trainee'] }), 'nobody'),
			giveSecret(posted(app, { secret: '4826', again: '4826' }), 'nobody'),
			openAccess(posted(app, { until: '2026-03-20' }), 'nobody'),
			eraseFromShop(posted(app, { understood: 'erase' }), 'nobody')
		])
			expect((await answered(action)).status).toBe(404);
	});
});

describe('an auditor’s access', () => {
	it('lasts to the end of the day chosen', async () => {
		const { app } = await demoShop();
		const { to } = await answered(openAccess(posted(app, { until: '2026-03-09' }), 'demo-auditor'));
		expect(to).toContain('done=opened');
		const until = app.journal.state.people.get('demo-auditor')!.auditorUntil!;
		const rolesOn = (at: string) => rolesAt(app.journal.state, 'demo-auditor', at);
		expect(rolesOn(new Date(Date.parse(until) - 1).toISOString())).toEqual(['auditor']);
		expect(rolesOn(until)).toEqual([]);
		const { timeZone } = app.journal.state.shop.founded!;
		const shown = new Intl.DateTimeFormat('en-CA', { timeZone }).format(new Date(until));
		expect(shown).toBe('2026-03-09');
	});

	it.each([
		['', /calendar/],
		['2026-02-30', /calendar/],
		['9999-12-31', /./],
		['2026-03-01', /later day/],
		['2026-04-20', /31 days/]
	])('until “%s” is refused at the field', async (until, words) => {
		const { app } = await demoShop();
		const before = app.journal.head.hash;
		const { data } = await answered(openAccess(posted(app, { until }), 'demo-auditor'));
		expect(data!.problems.until).toMatch(words);
		expect(app.journal.head.hash).toBe(before);
	});
});

describe('erasing a person', () => {
	it('needs the tick', async () => {
		const { app } = await demoShop();
		const before = app.journal.head.hash;
		const { data } = await answered(eraseFromShop(posted(app, {}), 'demo-trainee'));
		expect(data!.problems).toHaveProperty('understood');
		expect(app.journal.head.hash).toBe(before);
	});

	it('takes the name and the secret and leaves the entries', async () => {
		const { app } = await demoShop();
		const entries = app.journal.entries.length;
		const { to } = await answered(eraseFromShop(posted(app, { understood: 'erase' }), 'demo-trainee'));
		expect(to).toContain('done=erased');
		expect(app.secrets.has('demo-trainee')).toBe(false);
		expect(peopleList(app, 'en').at(-1)).toMatchObject({ id: 'demo-trainee', roles: [] });
		expect(peopleList(app, 'en').at(-1)!.name).toMatch(/^erased on /);
		expect(app.journal.entries).toHaveLength(entries + 1);
	});
});

import { describe, expect, it } from 'vitest';
import { defaultScheme } from '$lib/learning';
import { schemeAt } from '$lib/records';
import type { App } from '$lib/server/app';
import { changeScheme } from '$lib/server/shop/scheme/change-scheme';
import { schemeFromForm } from '$lib/server/shop/scheme/scheme-form';
import { schemeView } from '$lib/server/shop/scheme/scheme-view';
import { answered, demoShop, posted } from './in-the-shop';

const TODAY = '2026-03-02';
const shown = (app: App, lang: 'en' | 'es' = 'en'): Record<string, string> =>
	Object.fromEntries(
		schemeView(app, lang).groups.flatMap(({ limits }) => limits.map(({ name, value }) => [name, value]))
	);

describe('the form of the scheme', () => {
	it('left as it is shown is the scheme, in both languages', async () => {
		const { app } = await demoShop();
		for (const lang of ['en', 'es'] as const)
			expect(schemeFromForm(shown(app, lang), lang)).toEqual({ ok: true, scheme: defaultScheme });
	});

	it.each([
		[{ 'retest.daysApart': '' }, 'retest.daysApart'],
		[{ 'retest.daysApart': 'a week' }, 'retest.daysApart'],
		[{ 'retest.daysApart': '0' }, 'retest.daysApart'],
		[{ 'retest.daysApart': '91' }, 'retest.daysApart'],
		[{ 'retest.daysApart': '-7' }, 'retest.daysApart'],
		[{ 'sequential.alpha': '5.55' }, 'sequential.alpha'],
		[{ 'sequential.p0': '95', 'sequential.p1': '90' }, 'sequential'],
		[{ 'sequential.passAtTruncation': '46' }, 'sequential'],
		[{ 'sequential.passAtTruncation': '30' }, 'sequential'],
		[{ 'sequential.truncateAt': '10', 'sequential.passAtTruncation': '10' }, 'sequential'],
		[{ 'safety.cleanRun': '60' }, 'safety'],
		[{ 'safety.cleanRun': '12' }, 'safety'],
		[{ 'validity.monthsWithSafety': '36' }, 'validity'],
		[{ 'notice.lastDays': '90' }, 'notice']
	])('%j is a problem at “%s”, in words of both languages', async (change, at) => {
		const { app } = await demoShop();
		const words = (['en', 'es'] as const).map((lang) => {
			const read = schemeFromForm({ ...shown(app, lang), ...change }, lang);
			expect(!read.ok && Object.keys(read.problems)).toEqual([at]);
			return read.ok ? '' : read.problems[at]!;
		});
		expect(words[0]).not.toBe(words[1]);
		expect(words.join()).not.toContain('undefined');
	});
});

describe('a new version of the scheme', () => {
	const form = (app: App, change: Record<string, string> = {}) => ({
		...shown(app),
		basedOn: '1',
		effective: TODAY,
		...change
	});

	it('holds from its day on, and the first stays what it was', async () => {
		const { app } = await demoShop();
		const wish = form(app, { 'continuity.months': '4', effective: '2026-04-01' });
		expect((await answered(changeScheme(posted(app, wish)))).to).toContain('done=set');
		const months = (at: string) => schemeAt(app.journal.state, at).limits.continuity.months;
		expect(months('2026-03-20T12:00:00.000Z')).toBe(6);
		expect(months('2026-04-02T12:00:00.000Z')).toBe(4);
		const view = schemeView(app, 'en');
		expect(view).toMatchObject({ inForce: 1, newest: 2 });
		expect(view.versions[0]!.changes).toMatchObject([{ was: '6 months', is: '4 months' }]);
		expect(view.versions.at(-1)!.changes).toEqual([]);
	});

	it('overwrites nobody’s version unseen', async () => {
		const { app } = await demoShop();
		await answered(changeScheme(posted(app, form(app, { 'continuity.months': '4' }))));
		const { status, data } = await answered(
			changeScheme(posted(app, form(app, { 'continuity.months': '5' })))
		);
		expect(status).toBe(409);
		expect(data!.problems['']).toMatch(/meantime/);
		expect(data!.kept['continuity.months']).toBe('5');
	});

	it('is refused in the past, without a day, without a change, and from nothing', async () => {
		const { app } = await demoShop();
		const before = app.journal.head.hash;
		const past = await answered(changeScheme(posted(app, form(app, { effective: '2026-03-01' }))));
		expect(past.data!.problems.effective).toMatch(/later day/);
		const dayless = await answered(changeScheme(posted(app, form(app, { effective: 'x' }))));
		expect(Object.keys(dayless.data!.problems)).toEqual(['effective']);
		expect((await answered(changeScheme(posted(app, form(app))))).status).toBe(409);
		expect((await answered(changeScheme(posted(app, {})))).status).toBe(400);
		expect(app.journal.head.hash).toBe(before);
	});
});

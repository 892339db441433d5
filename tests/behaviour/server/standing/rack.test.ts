import { expect, it } from 'vitest';
import { withdrawSignOff, startTraining } from '$lib/records';
import { areasOf } from '$lib/server/standing/areas';
import { rackView } from '$lib/server/standing/rack';
import type { App } from '$lib/server/app';
import {
	act,
	clearSafety,
	doLessons,
	LEAD,
	makeSigned,
	passPractical,
	TRAINEE,
	workedShop
} from './worked-shop';

const DAY = 24 * 60 * 60_000;

const panel = (app: App) =>
	rackView(app.journal.state, areasOf(app, TRAINEE, 'en')).find(({ id }) => id === 'mixing');

it('hangs six panels in the order of the line', async () => {
	const { app } = await workedShop();
	const rack = rackView(app.journal.state, areasOf(app, TRAINEE, 'es'));
	expect(rack.map(({ name }) => name)).toEqual([
		'Recepción',
		'Preparación',
		'Mezcla',
		'Aplicación',
		'Curado',
		'Inspección'
	]);
	expect(new Set(rack.map(({ finish }) => finish))).toEqual(new Set(['bare']));
});

it('finishes a panel step by step', async () => {
	const { app } = await workedShop();
	const seen = [panel(app)?.finish];
	await doLessons(app, TRAINEE, 'mixing');
	seen.push(panel(app)?.finish);
	await clearSafety(app, TRAINEE);
	seen.push(panel(app)?.finish);
	await passPractical(app, TRAINEE, 'mixing');
	seen.push(panel(app)?.finish);
	expect(seen).toEqual(['bare', 'prepared', 'coated', 'cured']);
	expect(panel(app)?.strip).toBeUndefined();
});

it('dates a signed panel by the last good day and a lapsed one by the first day after it', async () => {
	const shop = await workedShop();
	const { app, wait } = shop;
	await makeSigned(shop, TRAINEE);
	expect(panel(app)).toMatchObject({ finish: 'signed', strip: { standing: 'signed', date: '2026-09-02' } });
	wait(185 * DAY);
	expect(panel(app)).toMatchObject({ finish: 'signed', strip: { standing: 'lapsed', date: '2026-09-03' } });
});

it('keeps what was signed on the panel when it is withdrawn and trained anew', async () => {
	const shop = await workedShop();
	const { app, wait } = shop;
	const signOff = await makeSigned(shop, TRAINEE);
	const reason = { text: 't-1', hash: 'a'.repeat(64), lang: 'en' as const };
	await act(app, withdrawSignOff, { signOff, reason }, LEAD);
	expect(panel(app)).toMatchObject({ finish: 'signed', strip: { standing: 'withdrawn' } });
	wait(60_000);
	await act(app, startTraining, { person: TRAINEE, area: 'mixing', how: 'new-application' }, LEAD);
	expect(panel(app)).toMatchObject({ finish: 'signed', strip: { standing: 'in-training' } });
});

import { expect, test as base } from '@playwright/test';
import { fileURLToPath } from 'node:url';
import { bringActors, type Actor, type Actors } from './actors';
import { aroundActions, astray, hostileSet, post, shortSet, type Target } from './attempts';
import { urlEncoded } from './bodies';
import { campaign } from './campaign';
import { ANSWERED, filledIn, NOT_YET } from './filled-in';
import { answered, broken, found, taken } from './judge';
import { pathOf, placesOf } from './places';
import { headersOf, oddMethods, oddQueries, reading, strayPaths } from './readings';
import { recordWatch } from './record-watch';
import { routeTree } from './route-tree';
import { sender } from './send';
import { layInStock, type Stock } from './stock';
import { survey, type Action } from './survey';

const test = base.extend<{ dataFolder: string }>({ dataFolder: ['', { option: true }] });
const FOLDER = fileURLToPath(new URL('../../../src/routes', import.meta.url));
/** More complaints than anybody reads. */
const MOST_SHOWN = 40;

const routes = routeTree(FOLDER);
let actors: Actors;
let stock: Stock;
let actions: Action[];
const everybody = () => Object.values(actors);

const targetOf = (one: Action, actor: Actor, path: string, origin: string): Target => ({
	...one,
	...{ path, origin, headers: headersOf(actor), filled: one.shown.get(actor), own: one.own.has(actor) }
});

test.describe.configure({ mode: 'serial', timeout: 600_000 });

test('every form action and endpoint is found in the route tree', async ({ playwright, baseURL }) => {
	actors = await bringActors(playwright, baseURL!);
	stock = await layInStock(actors);
	const filled = filledIn(stock);
	actions = await survey({ routes, folder: FOLDER }, { actors, stock, filled }, baseURL!);

	const named = new Set(actions.map(({ at }) => at));
	console.log(`${named.size} form actions, ${routes.flatMap(({ methods }) => methods).length} endpoints`);
	expect(named.size).toBeGreaterThan(20);
	expect(named.size).toBe(routes.flatMap((route) => route.actions).length);
	expect(Object.keys(filled).filter((at) => !named.has(at))).toEqual([]);
});

test('no form action takes anything hostile, from any role or none', async ({ baseURL, dataFolder }) => {
	const { batch, complaints, sent, watch, close } = campaign(baseURL!, dataFolder);
	const before = watch.kept();
	for (const one of actions)
		for (const actor of everybody()) {
			const target = targetOf(one, actor, pathOf(one.route, one.place, actor.lang), baseURL!);
			await batch(one.first ? hostileSet(target) : shortSet(target), actor, taken);
			if (!one.first || one.action !== one.route.actions[0]) continue;
			const stray = strayPaths(one.route, one.place, actor.lang)
				.filter((_, index) => index % 2 === 0)
				.map((path) => astray({ ...target, path }));
			await batch([...aroundActions(target), ...stray], actor, taken);
		}
	close();
	console.log(`${sent()} hostile forms sent`);
	expect(complaints.slice(0, MOST_SHOWN), `${complaints.length} complaints`).toEqual([]);
	expect(watch.chain()).toMatchObject({ ok: true });
	expect(watch.kept(), 'what was refused left nothing behind').toEqual(before);
});

test('no page or endpoint breaks at an odd address, query or method, and none enters anything', async ({
	baseURL,
	dataFolder
}) => {
	const { batch, complaints, sent, watch, close } = campaign(baseURL!, dataFolder);
	const before = watch.kept();
	for (const route of routes)
		for (const actor of everybody()) {
			const [place] = placesOf(route, stock);
			const path = pathOf(route, place!, actor.lang);
			const to = (paths: readonly string[]) => paths.map((one) => reading(one, actor));
			await batch(to(strayPaths(route, place!, actor.lang)), actor, found);
			await batch(to(oddQueries(path)), actor, broken);
			await batch(oddMethods(route, path, baseURL!, actor), actor, answered);
		}
	close();
	console.log(`${sent()} hostile readings`);
	expect(complaints.slice(0, MOST_SHOWN), `${complaints.length} complaints`).toEqual([]);
	expect(watch.chain()).toMatchObject({ ok: true });
	expect(watch.kept()).toEqual(before);
});

test('the same forms filled in right are taken, so they were refused for what was wrong', async ({
	baseURL,
	dataFolder
}) => {
	const { send, close } = sender(baseURL!);
	const { chain, intruders } = recordWatch(dataFolder);
	const untaken: string[] = [];
	for (const at of Object.keys(filledIn(stock)).filter((one) => !(one in NOT_YET))) {
		const statuses: number[] = [];
		const done = at in ANSWERED ? 200 : 303;
		for (const one of actions.filter((action) => action.at === at))
			for (const [actor, filled] of one.shown) {
				if (statuses.includes(done)) break;
				const target = targetOf(one, actor, pathOf(one.route, one.place, actor.lang), baseURL!);
				statuses.push((await send(post(target, urlEncoded(filled)))).status);
			}
		// a practice ticket is work in hand and no entry
		const entered = intruders().length > 0 || at.startsWith('practice') || at in ANSWERED;
		if (!statuses.includes(done) || !entered) untaken.push(`${at}: ${statuses.join()}`);
	}
	close();
	expect(untaken).toEqual([]);
	expect(chain()).toMatchObject({ ok: true });
});

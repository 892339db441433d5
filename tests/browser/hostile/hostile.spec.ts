import { expect, test as base } from '@playwright/test';
import { fileURLToPath } from 'node:url';
import { bringActors, type Actor } from './actors';
import { attemptAtNoPlace, attemptsAt, type Attempt, type Target } from './attempts';
import { filledIn } from './filled-in';
import { inTurn } from './in-turn';
import { complaint, dueIn } from './judge';
import { pathOf, placesOf } from './places';
import { recordWatch } from './record-watch';
import { paramsOf, routeTree } from './route-tree';
import { sender } from './send';
import { layInStock } from './stock';
import { survey, type Action } from './survey';
import { IDS } from './values';

const test = base.extend<{ dataFolder: string }>({ dataFolder: ['', { option: true }] });
const ROUTES = fileURLToPath(new URL('../../../src/routes', import.meta.url));
const AT_ONCE = 4;
const MOST_SHOWN = 60;

test('nothing hostile is taken, by no form action, from nobody', async ({ playwright, baseURL, dataFolder }) => {
	test.setTimeout(900_000);
	const origin = baseURL!;
	const routes = routeTree(ROUTES);
	const actors = await bringActors(playwright, origin);
	const stock = await layInStock(actors);
	const actions = await survey({ routes, folder: ROUTES }, { actors, stock, filled: filledIn(stock) }, origin);
	console.log('unseen forms', [...new Set(actions.map(a => a.at))].filter(at => !actions.some(a => a.at === at && a.shown.size)));

	const watch = recordWatch(dataFolder);
	const { send, close } = sender(origin);
	const complaints: string[] = [];
	let sent = 0;
	const started = Date.now();
	const spent = new Map<string, number>();

	const targetOf = ({ at, action, names, shown }: Action, actor: Actor, path: string): Target => ({
		...{ at, action, names, path, origin },
		headers: { accept: 'text/html', 'accept-language': actor.lang, ...(actor.cookie ? { cookie: actor.cookie } : {}) },
		filled: shown.get(actor)
	});
	const tryAll = async (attempts: readonly Attempt[], { at }: Action, actor: Actor) => {
		const t0 = Date.now();
		await inTurn(attempts, AT_ONCE, async ({ what, asked }) => {
			sent += 1;
			const answer = await send(asked).catch((error: Error) => ({ status: 599, headers: {}, text: String(error) }));
			const wrong = complaint(answer, dueIn(asked.path, actor.lang));
			if (wrong) complaints.push(`${actor.name} → ${at} ${asked.path.slice(0, 70)}, ${what}: ${wrong}`);
		});
		for (const line of watch.intruders()) complaints.push(`${actor.name} → ${at} entered ${line.slice(0, 300)}`);
		if (Date.now() - t0 > 1500) console.log(actor.name, at, attempts.length, Date.now() - t0);
		spent.set(at, (spent.get(at) ?? 0) + Date.now() - t0);
	};

	for (const one of actions)
		for (const actor of Object.values(actors)) {
			await tryAll(attemptsAt(targetOf(one, actor, pathOf(one.route, one.place, actor.lang))), one, actor);
			const odd = paramsOf(one.route)
				.filter((name) => name !== 'lang')
				.flatMap((name) =>
					IDS.map((id) => {
						const params = { ...one.place.params, [name]: id };
						return attemptAtNoPlace(targetOf(one, actor, pathOf(one.route, { ...one.place, params }, actor.lang)));
					})
				);
			await tryAll(odd, one, actor);
		}
	close();
	console.log(`${sent} requests in ${(Date.now() - started) / 1000} s`);
	console.log([...spent].sort((a, b) => b[1] - a[1]).slice(0, 12));
	const { writeFileSync } = await import('node:fs');
	writeFileSync('/tmp/hostile-complaints.txt', complaints.join('\n'));
	expect(watch.chain().ok).toBe(true);
	expect(complaints.slice(0, MOST_SHOWN)).toEqual([]);
	void placesOf;
});

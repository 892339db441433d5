import { expect, test, type APIRequestContext } from '@playwright/test';
import { startOwnServer, type OwnServer } from '../fresh/own-server';
import type { Actor } from './actors';
import { aroundActions, hostileSet, post, type Target } from './attempts';
import { urlEncoded } from './bodies';
import { campaign } from './campaign';
import { taken, type Judge } from './judge';
import { formsOn } from './page-form';
import { headersOf } from './readings';

const PATH = '/es/setup';
const PASSPHRASE = 'seven quiet blue hoses';

/** The form of the first visit, filled in right by whoever knows the code, and the fields to go wrong in. */
async function firstVisit(
	server: OwnServer,
	browser: APIRequestContext,
	wrongIn: (field: string) => boolean
) {
	const page = await browser.get(server.url + PATH);
	const [form] = formsOn(await page.text(), new URL(PATH, server.url));
	const nobody: Actor = { name: 'nobody', id: null, lang: 'es', browser, cookie: '' };
	const right = {
		...{ code: server.code, shop: 'Birch Street Coating', zone: 'America/Mexico_City' },
		...{ lead: 'Elena Duarte', secret: PASSPHRASE, again: PASSPHRASE }
	};
	const target: Target = {
		...{ at: 'setup ?/default', action: 'default', path: PATH, origin: server.url, own: true },
		...{ headers: headersOf(nobody), names: form!.names.filter(wrongIn), boxes: [] },
		filled: Object.entries(right)
	};
	return { nobody, target, asked: post(target, urlEncoded(target.filled!)) };
}

let server: OwnServer;
test.beforeEach(async () => {
	server = await startOwnServer();
});
test.afterEach(() => server.stop());

test('setting up a shop takes nothing hostile even from whoever knows the code, and then the right form', async ({
	request
}) => {
	const { nobody, target, asked } = await firstVisit(server, request, (field) => field !== 'code');
	const { batch, complaints, watch, close } = campaign(server.url, server.folder);
	const before = watch.kept();
	await batch([...hostileSet(target), ...aroundActions(target)], nobody, taken);
	expect(complaints).toEqual([]);
	expect(watch.entries()).toBe(0);
	expect(watch.kept()).toEqual(before);

	const led: Judge = ({ status }) => (status === 303 ? null : `was not taken: ${status}`);
	await batch([{ what: 'right', asked }], nobody, led);
	close();
	expect(complaints.filter((one) => one.includes('not taken'))).toEqual([]);
	expect(watch.entries()).toBeGreaterThan(0);
	expect(watch.chain()).toMatchObject({ ok: true });
});

test('no code but the one on the console sets up a shop, and guessing makes even that one wait', async ({
	request
}) => {
	const { nobody, target, asked } = await firstVisit(server, request, (field) => field === 'code');
	const { batch, complaints, watch, close } = campaign(server.url, server.folder);
	await batch(hostileSet(target), nobody, taken);
	await batch([{ what: 'right, too early', asked }], nobody, taken);
	close();
	expect(complaints).toEqual([]);
	expect(watch.entries()).toBe(0);
});

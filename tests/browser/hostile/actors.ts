import type { APIRequestContext, PlaywrightWorkerArgs } from '@playwright/test';
import type { Lang } from '$lib/i18n';
// by file, not by layer: the layer's door needs kit
import { demoPeople } from '../../../src/lib/server/demo-people';

/** Who sends: somebody of the demo shop at a browser of their own, or nobody. */
export type Actor = {
	readonly name: string;
	/** Id in the record; null for nobody. */
	readonly id: string | null;
	/** The language they have the program in. */
	readonly lang: Lang;
	readonly browser: APIRequestContext;
	/** What their browser sends along. */
	readonly cookie: string;
};

/** Every role, and nobody. Two trainees, since one may not reach into the other's work. */
const ACTORS = [
	{ name: 'nobody', id: null, lang: 'es' },
	{ name: 'trainee', id: 'demo-trainee', lang: 'en' },
	{ name: 'other trainee', id: 'demo-aprendiz', lang: 'es' },
	{ name: 'supervisor', id: 'demo-supervisor', lang: 'en' },
	{ name: 'lead', id: 'demo-lead', lang: 'es' },
	{ name: 'auditor', id: 'demo-auditor', lang: 'en' }
] as const;
export type ActorName = (typeof ACTORS)[number]['name'];
export type Actors = Readonly<Record<ActorName, Actor>>;

async function signIn(browser: APIRequestContext, id: string, lang: Lang) {
	const secret = demoPeople.find((person) => person.id === id)?.secret ?? '';
	const answer = await browser.post(`/${lang}/sign-in`, { form: { who: id, secret }, maxRedirects: 0 });
	if (answer.status() !== 303) throw new Error(`${id} was not signed in: ${answer.status()}`);
}

/** Signs everybody in through the sign-in page's own form. */
export async function bringActors(
	playwright: PlaywrightWorkerArgs['playwright'],
	baseURL: string
): Promise<Actors> {
	const brought: [ActorName, Actor][] = [];
	for (const { name, id, lang } of ACTORS) {
		const browser = await playwright.request.newContext({ baseURL, extraHTTPHeaders: { origin: baseURL } });
		if (id) await signIn(browser, id, lang);
		const { cookies } = await browser.storageState();
		const cookie = cookies.map((one) => `${one.name}=${one.value}`).join('; ');
		brought.push([name, { name, id, lang, browser, cookie }]);
	}
	return Object.fromEntries(brought) as Record<ActorName, Actor>;
}

import { isRedirect, type RequestEvent } from '@sveltejs/kit';
import type { App } from '$lib/server/app';
import { fillDemoShop } from '$lib/server/demo';
import { testApp } from '../test-app';
import { testEvent } from '../test-event';

type Form = Readonly<Record<string, string | readonly string[]>>;
type Answer = {
	/** Where a form that was taken led to. */
	to?: string;
	status?: number;
	data?: {
		kept: Record<string, unknown>;
		problems: Record<string, string>;
		listed?: { path: string; text: string }[];
	};
};

/** The demo shop, on 2 March 2026. */
export const demoShop = async () => {
	const { app, wait } = await testApp();
	await fillDemoShop(app);
	return { app, wait };
};

/** A form as a browser posts it, in the name of a person of the demo shop. */
export const posted = (
	app: App,
	form: Form,
	{ person = 'demo-lead', lang = 'en' as 'en' | 'es' } = {}
): RequestEvent => {
	const event = testEvent(app, { person, method: 'POST' });
	const body = new URLSearchParams(
		Object.entries(form).flatMap(([name, value]) =>
			[value].flat().map((each): [string, string] => [name, String(each)])
		)
	);
	event.locals.lang = lang;
	return Object.assign(event, { request: new Request(event.url, { method: 'POST', body }) });
};

/** What a form action answers, or where it led to. */
export const answered = async (action: Promise<unknown>): Promise<Answer> => {
	try {
		return (await action) as Answer;
	} catch (thrown) {
		if (isRedirect(thrown)) return { to: thrown.location };
		throw thrown;
	}
};

import type { HandleServerError } from '@sveltejs/kit';
import { randomUUID } from 'node:crypto';
import { requests } from '$lib/i18n';

type Worded = keyof (typeof requests)['en']['status'];

/** Logs what is our fault, with a number to ask about, and words the answer. Nothing of the fault itself is shown. */
export const reportFault: HandleServerError = ({ error, event, status }) => {
	const lang = event.locals.lang ?? 'en';
	const words = requests[lang].status;
	const { title } = words[status in words ? (status as Worded) : 500];
	if (status < 500) return { message: title };
	const id = randomUUID().slice(0, 8);
	console.error(`[${id}] ${event.request.method} ${event.url.pathname}`, error);
	return { message: `${title} (${id})` };
};

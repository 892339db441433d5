import { redirect, type Handle } from '@sveltejs/kit';
import { closedBook, isBook } from '../closed-book';

const SETUP = '/[lang=lang]/setup';

/** Sends on whoever asks for a page that is not for now: no shop yet, or the book is closed to them. */
export const leadOn: Handle = ({ event, resolve }) => {
	const { app, lang, who } = event.locals;
	const { state } = app.journal;
	const reads = event.request.method === 'GET' || event.request.method === 'HEAD';
	if (reads && !state.shop.founded && event.route.id !== null && event.route.id !== SETUP)
		redirect(303, `/${lang}/setup`);
	if (who && isBook(event.route.id) && closedBook(state, who.id)) redirect(303, `/${lang}/closed-book`);
	return resolve(event);
};

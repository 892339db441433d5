import { fail, type RequestEvent } from '@sveltejs/kit';
import { METRIC, solve, US } from '$lib/engine';
import { benchCard } from '$lib/i18n';
import type { Reader } from '$lib/paper';
import { requireRole } from '../guard';
import { readerOf } from '../reader';
import { shopInForce } from '../shop-in-force';
import { cardAccess } from './access';
import { cardView } from './card-view';
import { blankEntries, readForm, withLines, type Entries } from './entries';
import { jobFormView } from './form-view';
import { jobFromEntries } from './job-from-entries';
import { refusalView } from './refusal-view';

/** Whoever asks for the card, with what they get of one. */
function asking(event: RequestEvent) {
	const { id } = requireRole(event, 'trainee', 'supervisor');
	const { app, lang } = event.locals;
	return { app, person: id, reader: readerOf(event), access: cardAccess(app, id, lang) };
}

const withUnits = (reader: Reader, { units }: Entries): Reader =>
	units ? { ...reader, units: units === 'us' ? US : METRIC } : reader;

/** The page before anything is entered; no form for whoever gets nothing of a card. */
export function openBenchCard(event: RequestEvent) {
	const { app, access, reader } = asking(event);
	const { shop } = shopInForce(app);
	const hasSheets = Object.keys(shop.sheets).length > 0;
	return { may: access.may, hasSheets, job: jobFormView(blankEntries(), {}, shop, reader) };
}

/**
 * Works a posted job out, or takes the form on: one line more, one less, back from the card. Nothing of it is kept;
 * card and form carry the job along.
 */
export async function workOut(event: RequestEvent) {
	const { app, person, access, reader: own } = asking(event);
	const words = benchCard[own.lang];
	if (!access.may) return fail(403, { problem: words.notYours });
	const read = readForm(await event.request.formData());
	if (!read) return fail(400, { problem: words.tampered });
	const { wish, entries } = read;
	const reader = withUnits(own, entries);
	const inForce = shopInForce(app);
	const form = (to: Entries, problems: Record<string, string> = {}) =>
		jobFormView(to, problems, inForce.shop, reader);
	if (wish !== 'work') return { job: form(withLines(entries, wish)) };

	const job = jobFromEntries(entries, inForce.shop, reader);
	if (!job.ok) return fail(400, { problem: words.correct, job: form(entries, job.problems) });
	const plan = solve(job.job, inForce.shop);
	const asEntered = form(entries);
	if (plan.decision !== 'accept')
		return fail(422, { job: asEntered, refusal: refusalView(plan, job.job.ticket, reader) });
	return { job: asEntered, card: cardView(app, { ...job, plan, inForce, access, person }, reader) };
}

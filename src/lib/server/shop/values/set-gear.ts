import { redirect, type ActionFailure, type RequestEvent } from '@sveltejs/kit';
import { PROTECTIVE, type Shop } from '$lib/engine';
import { refusalText, shopValues } from '$lib/i18n';
import type { SetShopValue } from '$lib/records';
import { act } from '../../act';
import { requireRole } from '../../guard';
import { shopInForce } from '../../shop-in-force';
import { withTexts } from '../../with-texts';
import { allTyped } from '../all-typed';
import { refusedAt, sentBack, type SentBack } from '../sent-back';
import { decisionProblems, pastInWords } from './decision-entries';
import { gearId, listedFor, TASKS } from './gear-view';
import { setShopValues } from './set-values';

const isGear = (value: FormDataEntryValue): boolean => PROTECTIVE.some((item) => item === value);

/** Whether every tick is one the form offers: a made-up one must not pass for a tick taken away. */
const isOffered = (form: FormData): boolean => TASKS.every((task) => form.getAll(task).every(isGear));

/** The gear ticked per task. */
const ticked = (form: FormData) =>
	TASKS.map((task) => {
		const values = new Set(form.getAll(task));
		return { task, items: PROTECTIVE.filter((item) => values.has(item)) };
	});

/** The lines of the hazard assessment in which the ticks differ from what holds on the day. */
const changes = (marks: ReturnType<typeof ticked>, shop: Shop): Omit<SetShopValue, 'reason'>[] =>
	marks.flatMap(({ task, items }) => {
		const listed = listedFor(shop, task);
		return PROTECTIVE.filter((item) => items.includes(item) !== listed.includes(item)).map((item) => ({
			value: gearId(task, item),
			amount: { from: shop.on, value: items.includes(item) ? 1 : 0 },
			from: shop.on
		}));
	});

/** A lead enters what the shop's hazard assessment lists per task, all changes as one act. */
export const setGear = async (event: RequestEvent): Promise<ActionFailure<SentBack>> => {
	requireRole(event, 'lead');
	const { app, lang } = event.locals;
	const form = await event.request.formData();
	const { from, reason } = allTyped(form, ['from', 'reason']);
	const marks = ticked(form);
	const kept = {
		from,
		reason,
		...Object.fromEntries(marks.map(({ task, items }) => [task, items] as const))
	};
	if (!isOffered(form)) return sentBack(kept, { '': refusalText({ code: 'malformed' }, lang) });
	const problems = decisionProblems({ from, reason }, lang);
	if (Object.keys(problems).length > 0) return sentBack(kept, problems);

	const wishes = changes(marks, shopInForce(app, from).shop);
	if (wishes.length === 0) return sentBack(kept, { '': shopValues[lang].gearUnchanged }, 409);
	const outcome = await withTexts(app, { reason }, lang, (refs) =>
		act(
			event,
			setShopValues,
			wishes.map((wish) => ({ ...wish, reason: refs.reason }))
		)
	);
	if (!outcome.ok)
		return refusedAt(outcome, kept, { fields: ['from'], lang, inWords: pastInWords(app, lang) });
	redirect(303, `/${lang}/shop/values/gear?done=set`);
};

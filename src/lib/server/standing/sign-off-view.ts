import { format, type Lang } from '$lib/i18n';
import type { SignOff, TextRef } from '$lib/records';
import type { App } from '../app';
import { nameOf, shownText } from '../shown-text';
import { shopTime } from './shop-time';

type Conflict = SignOff['conflict'];

/** What a signer declared of themselves, as codes the page words. */
export const declared = (conflict: Conflict) =>
	(Object.keys(conflict) as (keyof Conflict)[]).filter((each) => conflict[each]);

/** A signature with everything that came after it, in words. Nothing of it changes when more comes. */
export function signOffView(app: App, signOff: SignOff, lang: Lang) {
	const day = (on: string) => format.date(on, lang);
	const acted = (act: { by: string; at: string; reason: TextRef }) => ({
		by: nameOf(app, act.by, lang),
		at: shopTime(app, act.at, lang),
		reason: shownText(app, act.reason, lang)
	});
	const { evidence, override, suspended, withdrawn } = signOff;
	return {
		id: signOff.signOff,
		signer: nameOf(app, signOff.signer, lang),
		meaning: signOff.meaning,
		at: shopTime(app, signOff.signedAt, lang),
		flags: [
			...(signOff.nonIndependent ? (['non-independent'] as const) : []),
			...(signOff.foundingLead ? (['founding-lead'] as const) : [])
		],
		declared: declared(signOff.conflict),
		watchedBy: signOff.watchedBy.map((id) => nameOf(app, id, lang)),
		override: override && { what: override.what, reason: shownText(app, override.reason, lang) },
		full: signOff.full,
		validFrom: day(signOff.validFrom),
		validUntil: day(signOff.validUntil),
		confirmBy: day(signOff.confirmBy),
		reevaluationDue: day(signOff.reevaluationDue),
		evidence,
		scheme: signOff.scheme,
		seconds: signOff.seconds.map(({ second, at }) => ({
			name: nameOf(app, second, lang),
			at: shopTime(app, at, lang)
		})),
		confirmations: signOff.confirmations.map(({ by, at, jobs }) => ({
			by: nameOf(app, by, lang),
			at: shopTime(app, at, lang),
			jobs: jobs.map(({ job, on }) => ({ job, on: day(on) }))
		})),
		reinstatements: signOff.reinstatements.map(acted),
		suspended: suspended && { ...acted(suspended), reviewBy: day(suspended.reviewBy) },
		withdrawn: withdrawn && acted(withdrawn)
	};
}

export type SignOffEvidence = ReturnType<typeof signOffView>;

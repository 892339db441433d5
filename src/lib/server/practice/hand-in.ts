import { DRILL_KINDS } from '$lib/drills';
import { ENGINE_VERSION, grade } from '$lib/engine';
import { handInPractice, type HandInPractice, type Json } from '$lib/records';
import type { RequestEvent } from '@sveltejs/kit';
import { act } from '../act';
import { requirePerson } from '../guard';
import { answersIn } from './answers';
import { askedIn, keepPractice, type PracticeDraft } from './draft';

/** Stations are parts of the same tickets that proving issues; a short drill draws its own. */
const kindOf = ({ part }: PracticeDraft): string =>
	DRILL_KINDS.some(({ id }) => id === part) ? part : 'ticket';

/** Enters the practised ticket in the record, where it never counts, and keeps the sheet to be looked at. */
export async function handInPracticeDrill(event: RequestEvent, draft: PracticeDraft) {
	const answers = answersIn(draft.entries);
	const findings = grade(draft.plan, answers, askedIn(draft));
	const wish: HandInPractice = {
		attempt: draft.attempt,
		kind: kindOf(draft),
		seed: String(draft.seed),
		level: draft.breadth,
		engineVersion: ENGINE_VERSION,
		shopValuesHash: draft.valuesHash,
		rules: [...new Set(findings.all.map(({ rule }) => rule))],
		answers: answers as unknown as Json,
		hints: Object.values(draft.hints).reduce<number>((sum, step) => sum + step, 0),
		right: findings.result === 'clear',
		findings: [...new Set(findings.breaches.map(({ rule }) => rule))]
	};
	const outcome = await act(event, handInPractice, wish);
	if (outcome.ok) await keepPractice(event.locals.app, requirePerson(event).id, { ...draft, handedIn: true });
	return outcome;
}

import { drillKind } from '$lib/drills';
import { ENGINE_VERSION, grade } from '$lib/engine';
import { handInPractice, type HandInPractice, type Json } from '$lib/records';
import type { RequestEvent } from '@sveltejs/kit';
import { act } from '../act';
import { requirePerson } from '../guard';
import { answersIn } from './answers';
import { askedIn, keepPractice, type PracticeDraft } from './draft';

/** Stations are parts of the same tickets that proving issues; a short drill draws its own. */
const kindOf = ({ part }: PracticeDraft): string => (drillKind(part) ? part : 'ticket');

const distinct = (rules: readonly { readonly rule: string }[]) => [...new Set(rules.map(({ rule }) => rule))];

/** What the record keeps of a drill; a worked one was read and not done, and is not handed in. */
function wishOf(draft: PracticeDraft): HandInPractice {
	const answers = answersIn(draft.entries);
	const asked = askedIn(draft);
	const findings = grade(draft.plan, answers, asked);
	// a page that was handed in unchecked is met by this check for the first time
	const unchecked = draft.steps.flatMap(({ fields }, at) => (draft.checked.includes(at) ? [] : fields));
	const unmet = findings.breaches.filter(({ field }) => unchecked.includes(field));
	return {
		sheet: {
			attempt: draft.attempt,
			kind: kindOf(draft),
			seed: String(draft.seed),
			level: draft.breadth,
			engineVersion: ENGINE_VERSION,
			shopValuesHash: draft.valuesHash,
			rules: distinct(findings.all),
			answers: answers as unknown as Json,
			hints: Object.values(draft.hints).reduce<number>((sum, step) => sum + step, 0),
			right: findings.result === 'clear',
			findings: distinct(findings.breaches)
		},
		first: {
			part: draft.part,
			support: draft.support === 'half' ? 'half' : 'full',
			findings: [...new Set([...draft.firstFindings, ...distinct(unmet)])]
		}
	};
}

/** Enters the practised ticket in the record, where it never counts, and keeps the sheet to be looked at. */
export async function handInPracticeDrill(event: RequestEvent, draft: PracticeDraft) {
	const outcome = await act(event, handInPractice, wishOf(draft));
	if (outcome.ok) await keepPractice(event.locals.app, requirePerson(event).id, { ...draft, handedIn: true });
	return outcome;
}

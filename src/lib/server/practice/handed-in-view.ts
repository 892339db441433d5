import { TRAPS } from '$lib/drills';
import { grade, ruleById } from '$lib/engine';
import { say } from '$lib/i18n';
import { caseToldView, type Reader } from '$lib/paper';
import { answersIn } from './answers';
import { caseFileIn } from './case-panel';
import { askedIn, offeredIn, type PracticeDraft } from './draft';
import { taughtFinding } from './taught-finding';

/** What comes out when the drill is handed in: every breach in words, and what had been woven into the ticket. */
export function handedInView(draft: PracticeDraft, reader: Reader) {
	const findings = grade(draft.plan, answersIn(draft.entries), askedIn(draft));
	const offered = offeredIn(draft);
	const file = caseFileIn(draft);
	return {
		result: findings.result,
		told: file ? caseToldView(file, reader) : null,
		breaches: findings.breaches.map((finding) => taughtFinding(finding, draft.seed, offered, reader)),
		credit: {
			kept: findings.all.filter(({ zone }) => zone === 'green').length,
			amber: findings.breaches.filter(({ zone }) => zone === 'amber').length,
			of: findings.all.length
		},
		traps: TRAPS.filter(({ id }) => draft.traps.includes(id)).map(({ title, rule }) => ({
			title: say(title, reader.lang),
			href: `/${reader.lang}/rules/${rule}`
		})),
		decision: draft.plan.decision,
		reasons: draft.plan.reasons.map((id) => say(ruleById(id).title, reader.lang))
	};
}

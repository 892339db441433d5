import type { SafetyStanding } from './safety-gate';
import type { VerdictState } from './sequential-test';

/** What a sign-off of one competency rests on; for a signature after a refresher, only what came since. */
export type Evidence = {
	readonly lessonsDone: boolean;
	readonly verdict: VerdictState;
	readonly safety: SafetyStanding['state'];
	readonly practical: 'none' | 'refused' | 'accepted';
};

export type EvidenceGap = 'lessons' | 'verdict' | 'safety-gate' | 'practical';

/** The parts still missing, in the order they are worked through. All must be there: none makes up for another. */
export function evidenceGaps(evidence: Evidence): EvidenceGap[] {
	const gaps: EvidenceGap[] = [];
	if (!evidence.lessonsDone) gaps.push('lessons');
	if (evidence.verdict !== 'passed') gaps.push('verdict');
	if (evidence.safety !== 'passed') gaps.push('safety-gate');
	if (evidence.practical !== 'accepted') gaps.push('practical');
	return gaps;
}

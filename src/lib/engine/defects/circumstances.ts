import type { Answers } from '../grading/answer';
import type { Job } from '../job/job';
import type { Shop } from '../shop/shop';
import type { Direction } from './causes';

/** What is known of how a defective part was made. Everything may be missing; nothing is guessed. */
export type Circumstances = {
	/** The job it came from, with the sheets and shop values of its day. */
	readonly ran?: { readonly job: Job; readonly shop: Shop };
	/** What was written down of how that job was run; only read together with `ran`. */
	readonly recorded?: Answers;
	/** Results of the causes' own tests so far, by rule id: kept, or which way it was broken. */
	readonly tests?: Readonly<Record<string, Direction | 'kept'>>;
};

/** A part that carries a film was accepted and sprayed, whatever nobody wrote down. */
export const IMPLIED_BY_A_COATED_PART: Answers = {
	decision: { kind: 'choice', option: 'accept' },
	'spray-go': { kind: 'choice', option: 'go' },
	'booth-action': { kind: 'choice', option: 'spray' }
};

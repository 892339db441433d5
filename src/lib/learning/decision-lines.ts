import type { SequentialPlan } from './sequential-plan';

export type DecisionLines = {
	/** What a right drill adds to the log likelihood ratio, and what a wrong one takes away (negative). */
	readonly right: number;
	readonly wrong: number;
	/** Pass at or above `upper`, fail at or below `lower`. */
	readonly upper: number;
	readonly lower: number;
	/** The same as lines over the drill number n: pass when right >= slope * n + passIntercept, fail likewise. */
	readonly slope: number;
	readonly passIntercept: number;
	readonly failIntercept: number;
};

type Limits = Pick<SequentialPlan, 'p0' | 'p1' | 'alpha' | 'beta'>;

function insist(limits: Limits) {
	const { p0, p1, alpha, beta } = limits;
	if (!(p0 > 0 && p0 < p1 && p1 < 1)) throw new RangeError(`0 < p0 < p1 < 1, got p0 ${p0} and p1 ${p1}`);
	if (!(alpha > 0 && beta > 0 && alpha + beta < 1))
		throw new RangeError(`alpha, beta > 0 and alpha + beta < 1, got ${alpha} and ${beta}`);
}

/**
 * The two parallel lines between which a run stays open.
 *   upper = ln((1 - beta) / alpha), lower = ln(beta / (1 - alpha))
 * @throws RangeError when 0 < p0 < p1 < 1 or 0 < alpha + beta < 1 does not hold
 */
export function decisionLines(limits: Limits): DecisionLines {
	insist(limits);
	const { p0, p1, alpha, beta } = limits;
	const right = Math.log(p1 / p0);
	const wrong = Math.log((1 - p1) / (1 - p0));
	const upper = Math.log((1 - beta) / alpha);
	const lower = Math.log(beta / (1 - alpha));
	const per = right - wrong;
	return {
		right,
		wrong,
		upper,
		lower,
		slope: -wrong / per,
		passIntercept: upper / per,
		failIntercept: lower / per
	};
}

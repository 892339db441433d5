import { addMonths, type IsoDate } from './calendar';
import type { Scheme } from './scheme';

export type Validity = {
	/** Last day the sign-off holds, the earlier of its own end and the full re-evaluation. */
	readonly validUntil: IsoDate;
	/** Last day for the next confirmation that the person has done this work. */
	readonly continuityDue: IsoDate;
	/** Last day for a full re-evaluation with all parts. */
	readonly reevaluationDue: IsoDate;
	/** The date that comes first, and what it is for. */
	readonly next: { readonly on: IsoDate; readonly what: 'continuity' | 'renewal' | 'reevaluation' };
};

const latest = (dates: readonly IsoDate[]) => dates.reduce((a, b) => (a > b ? a : b));

/**
 * The dates that follow from a sign-off. A day counts as good up to its end.
 * @param signed.on the last sign-off
 * @param signed.evaluatedOn the last sign-off that rested on all parts taken anew
 * @param signed.confirmedOn the last confirmation of continuity, null where there is none yet
 * @param signed.holdsSafetySkill whether a rule of the competency belongs to a safety skill
 */
export function validity(
	scheme: Pick<Scheme, 'validity' | 'continuity'>,
	signed: {
		readonly on: IsoDate;
		readonly evaluatedOn: IsoDate;
		readonly confirmedOn: IsoDate | null;
		readonly holdsSafetySkill: boolean;
	}
): Validity {
	const { months, monthsWithSafety, reevaluationMonths } = scheme.validity;
	const renewal = addMonths(signed.on, signed.holdsSafetySkill ? monthsWithSafety : months);
	const reevaluationDue = addMonths(signed.evaluatedOn, reevaluationMonths);
	const worked = latest([signed.on, signed.confirmedOn ?? signed.on]);
	const continuityDue = addMonths(worked, scheme.continuity.months);
	// Of dates on one day the greater task is named: doing it covers the lesser ones.
	const [first, ...others] = [
		{ on: reevaluationDue, what: 'reevaluation' },
		{ on: renewal, what: 'renewal' },
		{ on: continuityDue, what: 'continuity' }
	] as const;
	return {
		validUntil: renewal < reevaluationDue ? renewal : reevaluationDue,
		continuityDue,
		reevaluationDue,
		next: others.reduce<Validity['next']>((soonest, date) => (date.on < soonest.on ? date : soonest), first)
	};
}

import type { Validity } from '$lib/learning';
import type { SignOff } from '../folds/sign-offs';

/** The dates of a signature as they were stored, and the continuity date as last confirmed. */
export function validityOf({ validUntil, reevaluationDue, confirmBy }: SignOff): Validity {
	// of dates on one day the greater task is named: doing it covers the lesser ones
	const dates: Validity['next'][] = [
		{ on: reevaluationDue, what: 'reevaluation' },
		{ on: validUntil, what: 'renewal' },
		{ on: confirmBy, what: 'continuity' }
	];
	return {
		validUntil,
		reevaluationDue,
		continuityDue: confirmBy,
		next: dates.reduce((soonest, date) => (date.on < soonest.on ? date : soonest))
	};
}

import {
	diagnose,
	FITS,
	ruleById,
	type Cause,
	type Circumstances,
	type DefectId,
	type Fit,
	type Shop
} from '$lib/engine';
import type { Conditions } from './conditions';
import { jobCompletions } from './job-completions';

type Tests = NonNullable<Circumstances['tests']>;

/**
 * The one fit that holds whatever the unknown part of the job was like; 'unknown' where that decides it. A job that
 * does not bring the rule up cannot have had a line for it written down, so it does not count against the others.
 */
function agreed(fits: readonly Fit[], written: boolean): Fit {
	const told = new Set(fits.filter((fit) => fit !== 'unknown'));
	if (told.size > 1 && written) told.delete('silent');
	const [only] = told;
	return only && told.size === 1 ? only : 'unknown';
}

/** The record a fit rests on, where the limit is the same for every job it may have been. */
function agreedRecord(causes: readonly Cause[]): Cause['recorded'] {
	const limits = new Set(causes.map(({ recorded }) => JSON.stringify(recorded?.expected)));
	return limits.size === 1 ? (causes[0]?.recorded ?? null) : null;
}

/**
 * What can have caused a defect, the best fit first. Only part of a job is known after a defect: a fit is given where
 * every job that part goes with has the same, and nothing is concluded from what nobody wrote down.
 */
export function likelyCauses(
	defect: DefectId,
	known: Conditions,
	tests: Tests,
	shop: Shop
): readonly Cause[] {
	const { written: recorded } = known;
	const all = jobCompletions(known, shop).map((job) =>
		diagnose(defect, { ran: { job, shop }, recorded, tests })
	);
	const key = ({ rule, direction }: Cause) => `${rule} ${direction}`;
	const found = new Map<string, Cause[]>();
	for (const cause of all.flat()) found.set(key(cause), [...(found.get(key(cause)) ?? []), cause]);
	return diagnose(defect, { tests })
		.map((cause): Cause => {
			const same = found.get(key(cause)) ?? [cause];
			const fit = agreed(
				same.map((one) => one.fit),
				recorded[ruleById(cause.rule).field] !== undefined
			);
			return { ...cause, fit, recorded: agreedRecord(same.filter((one) => one.fit === fit)) };
		})
		.toSorted((one, other) => FITS.indexOf(one.fit) - FITS.indexOf(other.fit));
}

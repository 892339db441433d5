import type { Cause } from '../diagnose';
import { FITS } from '../fit';
import { testEnd } from './by-eye';
import type { Network, NetworkCause, NetworkTest } from './network';
import { DIAGNOSIS_TEACHING, type UntestedFit } from './teaching';

/** @throws RangeError for a cause that was tested: what a test shows goes in as evidence */
export function untestedFit({ rule, fit }: Cause): UntestedFit {
	if (fit === 'shown' || fit === 'excluded')
		throw new RangeError(`network-of: ${rule} was tested already; its result is evidence, not a fit`);
	return fit;
}

const ofRule = (cause: Cause): NetworkCause => ({
	id: cause.rule,
	prior: DIAGNOSIS_TEACHING.brokenWhere[untestedFit(cause)].value,
	strength: DIAGNOSIS_TEACHING.strength.value
});

/** Rules with the same test share it: it comes out positive where any of them was broken. It bears the first one's id. */
function testsOf(causes: readonly Cause[]): readonly NetworkTest[] {
	const named = [...new Set(causes.map(({ test }) => test.en))];
	return named.map((test) => {
		const of = causes.filter((cause) => cause.test.en === test).map(({ rule }) => rule);
		const { sensitivity, falseAlarm } = DIAGNOSIS_TEACHING.test[testEnd(of[0]!)];
		return { id: of[0]!, of, sensitivity: sensitivity.value, falseAlarm: falseAlarm.value };
	});
}

/** One cause a rule, the best fit of its ways: too low and too high are not independent, and one test tells both. */
export const byRule = (causes: readonly Cause[]): readonly Cause[] => {
	const best = causes.toSorted((one, other) => FITS.indexOf(one.fit) - FITS.indexOf(other.fit));
	const kept = best.filter(({ rule }, index) => best.findIndex((one) => one.rule === rule) === index);
	return causes.filter((cause) => kept.includes(cause));
};

/**
 * The teaching network of a defect, from its causes as `diagnose` gives them without tests: one cause for each rule, by
 * the rule's id, and each test that the rules name.
 * @throws RangeError for causes that were tested already: results go in as evidence
 */
export function networkOf(causes: readonly Cause[]): Network {
	const rules = byRule(causes);
	return {
		causes: rules.map(ofRule),
		leak: DIAGNOSIS_TEACHING.leak.value,
		tests: testsOf(rules)
	};
}

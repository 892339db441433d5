import {
	networkOf,
	openTests,
	posterior,
	ruleById,
	type Cause,
	type Chances,
	type DefectId,
	type Network,
	type OpenTest
} from '$lib/engine';
import type { Random } from '../../random';
import type { DrillTicket } from '../kind';
import { happens } from './chance';
import { drawRecord } from './draw-record';
import { drawTruth } from './draw-truth';
import { explaining } from './explaining';

const FEWEST = 3;
const MOST = 6;
/** With fewer left open by the record there is nothing to choose between. */
const FEWEST_OPEN = 2;

/** A question that tests no cause: who it was does not say what went wrong. */
export const WHO = 'who-was-on-shift';

export type Case = {
	readonly defect: DefectId;
	/** In working order. */
	readonly causes: readonly Cause[];
	readonly network: Network;
	/** What each test is expected to tell, most first. */
	readonly tests: readonly OpenTest[];
	/** The test to do first, by the first rule it tests. */
	readonly best: string;
	/** Tests that are as good as that one, itself among them. */
	readonly good: readonly string[];
	/** What it came out with: that the rule was broken, or kept. */
	readonly positive: boolean;
	readonly before: Chances;
	readonly after: Chances;
	/** Rules that really were broken. */
	readonly truth: readonly string[];
};

/** A test that tells this share of what the best one tells is as good. */
const AS_GOOD = 0.9;

const defectSeen = { defect: true };

/** One defect on this job as a case to solve; undefined where too few or too many causes can explain it. */
export function drawCase(defect: DefectId, ticket: DrillTicket, random: Random): Case | undefined {
	const possible = explaining(defect, ticket, {});
	if (possible.length < FEWEST || possible.length > MOST) return undefined;
	const causes = explaining(defect, ticket, drawRecord(ticket.plan, possible, random));
	if (causes.filter(({ fit }) => fit === 'unchecked').length < FEWEST_OPEN) return undefined;
	const own = networkOf(causes);
	const nothing = { id: WHO, of: [], sensitivity: 0.5, falseAlarm: 0.5 };
	const network = { ...own, tests: [...own.tests, nothing] };
	const tests = openTests(network, defectSeen);
	const best = tests[0]!.id;
	const good = tests.filter(({ bits }) => bits >= AS_GOOD * tests[0]!.bits).map(({ id }) => id);
	// where every test of a cause is as good, there is nothing to choose
	if (good.length >= own.tests.length) return undefined;
	// a search in the wrong order is not the breach of a safety rule, and must not look like one
	if (ruleById(best).severity === 'safety-stop') return undefined;
	const truth = drawTruth(network, random);
	const { of, sensitivity, falseAlarm } = network.tests.find(({ id }) => id === best)!;
	const positive = happens(random, of.some((rule) => truth.includes(rule)) ? sensitivity : falseAlarm);
	return {
		defect,
		causes,
		network,
		tests,
		best,
		good,
		positive,
		before: posterior(network, defectSeen),
		after: posterior(network, { ...defectSeen, results: { [best]: positive } }),
		truth
	};
}

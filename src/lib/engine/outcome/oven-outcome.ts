import type { Answers } from '../grading/answer';
import { breached } from '../grading/breached';
import type { Job } from '../job/job';
import type { Plan } from '../plan/plan';
import { situation } from '../plan/situation';
import type { FieldId } from '../setup/fields';
import type { Shop } from '../shop/shop';
import { brokenRules, type Broken } from './broken';
import { defectsFrom } from './defects';
import { harmOf, HARMS } from './harm';
import { adhesion } from './measures/adhesion';
import { cureReached } from './measures/cure-reached';
import { filmBuilt } from './measures/film-built';
import { gloss } from './measures/gloss';
import { key } from './measures/key';
import { partHeat } from './measures/part-heat';
import { solventLeft } from './measures/solvent-left';
import { wetness } from './measures/wetness';
import type { Outcome, OutcomeDefect, OutcomeMeasure } from './outcome';
import { putIn, type PutIn } from './put-in';

/** A job that intake does not let start is planned no further, so nothing is measured of it. */
function measuresOf(
	given: PutIn,
	broken: readonly Broken[],
	defects: readonly OutcomeDefect[]
): readonly OutcomeMeasure[] {
	if (given.plan.decision !== 'accept') return [];
	return [
		filmBuilt(given),
		wetness(given, broken),
		solventLeft(given, broken),
		cureReached(given, broken),
		partHeat(given),
		key(given, broken),
		gloss(defects),
		adhesion(defects)
	].filter((measure) => measure !== undefined);
}

/**
 * What would come out of the oven if the job were run as set: a teaching model, labelled so in its data. Fields that
 * were not asked count as the plan answers them; safety stops are those of `grade`, empty fields too.
 * @param shop sheets and shop values in force for the plan
 * @throws RangeError where the shop has no data sheet for the coating, or for a rule of another engine version
 */
export function ovenOutcome(
	plan: Plan,
	answers: Answers,
	job: Job,
	shop: Shop,
	asked?: readonly FieldId[]
): Outcome {
	const seen = situation(job, shop);
	if (!seen) throw new RangeError(`oven-outcome: no data sheet ${job.coating} in force on ${shop.on}`);
	const given = putIn(plan, seen, answers, asked);
	const breaches = breached(plan, given.answers);
	const broken = brokenRules(breaches, given);
	const defects = defectsFrom(broken);
	const harm = breaches
		.filter(({ demand }) => demand.severity === 'safety-stop')
		.map(({ demand }) => demand.rule);
	const exposure = HARMS.map((one) => ({ harm: one, rules: harm.filter((rule) => harmOf(rule) === one) }));
	return {
		model: 'teaching',
		measures: measuresOf(given, broken, defects),
		defects,
		exposure: exposure.filter(({ rules }) => rules.length > 0),
		harm,
		unset: given.unset
	};
}

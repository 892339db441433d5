/*
 * Made-up people go through proving and practice.
 * Proving: how often a person who keeps each rule with a known chance passes, worked out exactly and observed in runs
 * of the real test; the two must agree.
 * Practice: whether choosing the next job by nextJob teaches more than drawing it, under two models of learning. The
 * default the program ships must be what this shows.
 *
 *   npm run simulate [-- runs [learners]]
 */
import { defaultScheme, NEXT_JOB_DEFAULT } from '../../src/lib/learning/index';
import { demoShop } from '../behaviour/drills/shop';
import { practicePool } from './practice-jobs';
import { LEARNING_MODELS } from './practice-learner';
import { adaptiveIsBetter, practiceResult, type Measured, type PracticeResult } from './practice-runs';
import { LEARNERS } from './proving-learners';
import { provingPools } from './proving-pool';
import { disagreements, MOST_ERRORS, provingResult, type Compared, type ProvingResult } from './proving-runs';

const DRILLS = 200;
const PRACTICE_DRILLS = 20;
const PRACTISED = 30;
const [runs = 4000, learners = 400] = process.argv.slice(2).map(Number);
const shop = demoShop();
const problems: string[] = [];

const compared = ({ exact, observed, error }: Compared, digits: number) =>
	`${exact.toFixed(digits)} ${observed.toFixed(digits)} ±${error.toFixed(digits)}`;

const provingLine = (who: string, what: string, { perDrill, passed, failed, drills }: ProvingResult) =>
	[
		who.padEnd(8),
		what.padEnd(12),
		perDrill.toFixed(4),
		compared(passed, 4),
		compared(failed, 4),
		compared(drills, 2)
	].join('  ');

console.log(
	`Proving: ${DRILLS} drills of each competency, ${runs} runs. Exact, observed ± its standard error.`
);
console.log('keeps a  competency   drill    passed                 failed                 drills');
console.log('rule                  right');
for (const [at, pool] of provingPools(shop, DRILLS).entries())
	for (const [who, learner] of LEARNERS.entries()) {
		const seed = at * LEARNERS.length + who;
		const result = provingResult(defaultScheme.sequential, pool, learner, { runs, seed });
		console.log(provingLine(learner.name, pool.competency, result));
		for (const of of disagreements(result))
			problems.push(
				`${learner.name}, ${pool.competency}: ${of} more than ${MOST_ERRORS} standard errors off`
			);
	}

const plusMinus = ({ value, error }: Measured) => `${value.toFixed(4)} ±${error.toFixed(4)}`;

const practiceLine = (name: string, { before, adaptive, random, difference }: PracticeResult['mean']) =>
	[name.padEnd(14), ...[before, adaptive, random, difference].map(plusMinus)].join('  ');

console.log(
	`\nPractice: ${learners} learners, ${PRACTISED} jobs each, chosen and drawn. True chance ± standard error.`
);
const pool = practicePool(shop, PRACTICE_DRILLS);
const better = LEARNING_MODELS.map((model) => {
	const result = practiceResult(model, pool, { learners, jobs: PRACTISED });
	console.log(model.name);
	console.log('                before           chosen           drawn            chosen − drawn');
	console.log(practiceLine('all skills', result.mean));
	console.log(practiceLine('weakest skill', result.worst));
	return adaptiveIsBetter(result);
});
const shown = better.every(Boolean) ? 'adaptive' : 'random';
console.log(`shown: ${shown}; shipped: ${NEXT_JOB_DEFAULT}`);
if (shown !== NEXT_JOB_DEFAULT)
	problems.push(`the shipped default is ${NEXT_JOB_DEFAULT}, shown is ${shown}`);

for (const problem of problems) console.log(problem);
if (problems.length) process.exitCode = 1;

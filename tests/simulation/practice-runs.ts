import { SKILLS, type Skill } from '../../src/lib/engine/index';
import { drawnJob, estimate, nextJob, type JobOffer, type PractisedJob } from '../../src/lib/learning/index';
import { LARGEST_SEED, seeded, type Random } from '../../src/lib/drills/random';
import { templateOf, trainedBy, type PracticePool } from './practice-jobs';
import { practiceLearner, type LearningModel } from './practice-learner';

/** How the next job is chosen. */
type Choice = (history: readonly PractisedJob[], offers: readonly JobOffer[], random: Random) => JobOffer;

const adaptive: Choice = (history, offers, random) =>
	nextJob(estimate(history), offers, random.integer(0, LARGEST_SEED))!;

/** Any part and any breadth, all alike, but not the skill of the job before. */
const atRandom: Choice = (history, offers, random) =>
	drawnJob(estimate(history), offers, random.integer(0, LARGEST_SEED))!;

type Outcome = { readonly mean: number; readonly worst: number };
/** Mean over the learners; of a difference between the same learners, with its standard error. */
export type Measured = { readonly value: number; readonly error: number };
export type PracticeResult = Record<
	keyof Outcome,
	{
		readonly before: Measured;
		readonly adaptive: Measured;
		readonly random: Measured;
		readonly difference: Measured;
	}
>;

/** Skills that some job on offer trains: practice cannot move the others. */
function skillsIn({ offers, jobsOf }: PracticePool): Skill[] {
	const trained = new Set(offers.flatMap(jobsOf).flatMap(trainedBy));
	return SKILLS.filter((skill) => trained.has(skill));
}

function measured(values: readonly number[]): Measured {
	const value = values.reduce((sum, one) => sum + one, 0) / values.length;
	const variance = values.reduce((sum, one) => sum + (one - value) ** 2, 0) / (values.length - 1);
	return { value, error: Math.sqrt(variance / values.length) };
}

/** The same made-up people practise twice: jobs chosen for them, and jobs drawn at random. */
export function practiceResult(
	model: LearningModel,
	pool: PracticePool,
	{ learners, jobs }: { readonly learners: number; readonly jobs: number }
): PracticeResult {
	const skills = skillsIn(pool);
	const templates = pool.offers.map(templateOf);
	const practised = (seed: number, choose: Choice, count: number): Outcome => {
		const learner = practiceLearner(seed, model, skills, templates);
		// not the stream the learner is born from: who a person is must not sway what is drawn
		const random = seeded(LARGEST_SEED - seed);
		const history: PractisedJob[] = [];
		while (history.length < count)
			history.push(learner.practise(random.pick(pool.jobsOf(choose(history, pool.offers, random)))));
		const chances = skills.map((skill) => learner.chanceIn(skill));
		return { mean: chances.reduce((sum, one) => sum + one, 0) / chances.length, worst: Math.min(...chances) };
	};
	const outcomes = Array.from({ length: learners }, (_, seed) => ({
		before: practised(seed, atRandom, 0),
		adaptive: practised(seed, adaptive, jobs),
		random: practised(seed, atRandom, jobs)
	}));
	const of = (key: keyof Outcome) => ({
		before: measured(outcomes.map(({ before }) => before[key])),
		adaptive: measured(outcomes.map((one) => one.adaptive[key])),
		random: measured(outcomes.map((one) => one.random[key])),
		difference: measured(outcomes.map((one) => one.adaptive[key] - one.random[key]))
	});
	return { mean: of('mean'), worst: of('worst') };
}

/** Better only where chance alone would hardly show so much: by more than two standard errors. */
export const adaptiveIsBetter = ({ mean }: PracticeResult): boolean =>
	mean.difference.value > 2 * mean.difference.error;

import { ruleById, type Skill } from '../../src/lib/engine/index';
import {
	expectedRight,
	firstDifficulty,
	type JobBreadth,
	type PractisedJob
} from '../../src/lib/learning/index';
import { LARGEST_SEED, seeded } from '../../src/lib/drills/random';
import { happens, normal } from './chance';
import { templateOf, trainedBy, type SimulatedJob } from './practice-jobs';

/** How practice teaches: what one job adds to each skill it asks, in logits, by how that skill came out. */
export type LearningModel = { readonly name: string; readonly right: number; readonly wrong: number };

/**
 * The first rewards success: performance factors analysis, Pavlik, Cen and Koedinger 2009 (form read in a public
 * lecture, sizes made up in its range). The second does not ask how a job came out: additive factors, Cen, Koedinger
 * and Junker 2006 (from memory, size made up). Nothing is forgotten in either.
 */
export const LEARNING_MODELS: readonly LearningModel[] = [
	{ name: 'performance factors, +0.3 right, +0.1 wrong', right: 0.3, wrong: 0.1 },
	{ name: 'additive factors, +0.2 each job', right: 0.2, wrong: 0.2 }
];

/** How people differ, between persons and between one person's skills, and jobs from the guess, in logits. Made up. */
const SPREAD = { persons: 0.5, skills: 1, jobs: 0.5 };

/** A made-up person who learns. */
export type PracticeLearner = {
	/** True chance in a skill, the mean over jobs of the three breadths: proving draws them alike. */
	chanceIn(skill: Skill): number;
	/** Does a job, learns from it and hands it in. */
	practise(job: SimulatedJob): PractisedJob;
};

/**
 * The same seed is the same person, whatever is practised then.
 * @param skills all that practice can move
 * @param templates part and breadth of all jobs, as in `templateOf`
 */
export function practiceLearner(
	seed: number,
	model: LearningModel,
	skills: readonly Skill[],
	templates: readonly string[]
): PracticeLearner {
	const born = seeded(seed);
	const person = normal(born, SPREAD.persons);
	const logits = new Map(skills.map((skill) => [skill, person + normal(born, SPREAD.skills)]));
	const surprises = new Map(templates.map((template) => [template, normal(born, SPREAD.jobs)]));
	const works = seeded(born.integer(0, LARGEST_SEED));

	function comesOutRight(skill: Skill, job: SimulatedJob): boolean {
		const before = logits.get(skill)!;
		const difficulty = firstDifficulty(job.breadth) + surprises.get(templateOf(job))!;
		const right = happens(works, expectedRight(before, difficulty));
		logits.set(skill, before + (right ? model.right : model.wrong));
		return right;
	}
	return {
		chanceIn(skill) {
			const of = (breadth: JobBreadth) => expectedRight(logits.get(skill)!, firstDifficulty(breadth));
			return (of(1) + of(2) + of(3)) / 3;
		},
		practise(job) {
			const wrong = trainedBy(job).filter((skill) => !comesOutRight(skill, job));
			const findings = wrong.map((skill) => {
				const own = job.rules.filter((rule) => ruleById(rule).skill === skill);
				return works.pick(own.length ? own : job.rules);
			});
			return { ...job, findings };
		}
	};
}

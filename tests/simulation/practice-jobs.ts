import { makePracticeDrill, PRACTICE_PARTS, partSkill, type PracticePart } from '../../src/lib/drills/index';
import type { JobBreadth, JobOffer, PractisedJob } from '../../src/lib/learning/index';
import { ruleById, type Shop, type Skill } from '../../src/lib/engine/index';

/** What a simulated person is given: a real drill, reduced to what it asks. */
export type SimulatedJob = Omit<PractisedJob, 'findings'>;

/** What jobs of one sort have in common. */
export const templateOf = ({ part, breadth }: Pick<SimulatedJob, 'part' | 'breadth'>) => `${part} ${breadth}`;

/** The skills a job asks, and the one it is there for. */
export const trainedBy = ({ rules, skill }: SimulatedJob): Skill[] => [
	...new Set([...rules.map((rule) => ruleById(rule).skill), ...(skill ? [skill] : [])])
];

const BREADTHS: readonly JobBreadth[] = [1, 2, 3];

function jobsOf(part: PracticePart, breadth: JobBreadth, shop: Shop, drills: number): SimulatedJob[] {
	return Array.from({ length: drills }, (_, seed) => {
		const drill = makePracticeDrill({ seed, breadth, shop, part });
		if (!drill) throw new Error(`no practice drill of ${part} for seed ${seed}`);
		const asked = new Set(drill.steps.flatMap(({ fields }) => fields));
		const demands = drill.plan.fields.filter(({ field }) => asked.has(field)).flatMap((one) => one.demands);
		return { part, breadth, skill: partSkill(part), rules: [...new Set(demands.map(({ rule }) => rule))] };
	});
}

/** Everything a person may be offered, in working order, with as many real drills of each. */
export function practicePool(shop: Shop, drills: number) {
	const offers: JobOffer[] = [];
	const byTemplate = new Map<string, readonly SimulatedJob[]>();
	for (const part of PRACTICE_PARTS) {
		const skill = partSkill(part);
		if (!skill) continue;
		for (const breadth of BREADTHS) {
			offers.push({ part, skill, breadth });
			byTemplate.set(templateOf({ part, breadth }), jobsOf(part, breadth, shop, drills));
		}
	}
	return {
		offers,
		jobsOf: (offer: JobOffer): readonly SimulatedJob[] => byTemplate.get(templateOf(offer))!
	};
}

export type PracticePool = ReturnType<typeof practicePool>;

import { makeProvingDrill } from '../../src/lib/drills/index';
import { STATIONS, type Shop, type Station } from '../../src/lib/engine/index';
import { askedRules, type AskedRule } from './drill-chance';

/** Proving drills of one competency, each as the rules it asks. */
export type ProvingPool = {
	readonly competency: Station;
	readonly drills: readonly (readonly AskedRule[])[];
};

const rulesOf = (competency: Station, shop: Shop, seed: number) => {
	const drill = makeProvingDrill({ seed, competency, shop });
	if (!drill) throw new Error(`no proving drill of ${competency} for seed ${seed}`);
	return askedRules(drill, competency);
};

/** As many drills of each competency, seeds 0, 1, 2 … */
export const provingPools = (shop: Shop, drills: number): ProvingPool[] =>
	STATIONS.map((competency) => ({
		competency,
		drills: Array.from({ length: drills }, (_, seed) => rulesOf(competency, shop, seed))
	}));

import type { FormulaNote } from '../formula-note';
import { blendSolids } from './blend-solids';
import { catalystShare } from './catalyst-share';
import { cupViscosity } from './cup-viscosity';
import { hardenerError } from './hardener-error';
import { hardenerForBase } from './hardener-for-base';
import { meshOpening } from './mesh-opening';
import { mixSplit } from './mix-split';
import { potLifeAt } from './pot-life-at';
import { ratioByMass } from './ratio-by-mass';
import { ratioByVolume } from './ratio-by-volume';
import { ratioError } from './ratio-error';
import { ratioFromShare } from './ratio-from-share';
import { sieveOpening } from './sieve-opening';

/** In the order they are shown. */
export const mixingFormulas: readonly FormulaNote[] = [
	...Object.values(mixSplit.volume),
	...Object.values(mixSplit.mass),
	hardenerForBase.volume,
	hardenerForBase.mass,
	ratioByMass,
	ratioByVolume,
	ratioError,
	hardenerError,
	catalystShare.ofBase,
	catalystShare.ofTotal,
	ratioFromShare.ofBase,
	ratioFromShare.ofTotal,
	blendSolids,
	potLifeAt,
	...Object.values(cupViscosity),
	sieveOpening,
	meshOpening
];

import type { FormulaNote } from '../formula-note';
import { addedSound } from './added-sound';
import { hearingProtector } from './hearing-protector';
import { maximumUse } from './maximum-use';
import { mixtureExposure } from './mixture-exposure';
import { noiseExposure } from './noise-exposure';
import { smallestProtection } from './smallest-protection';
import { timeWeightedAverage } from './time-weighted-average';
import { vapourConcentration } from './vapour-concentration';
import { vapourConcentrationAt } from './vapour-concentration-at';

/** In the order they are shown. */
export const exposureFormulas: readonly FormulaNote[] = [
	vapourConcentration,
	vapourConcentrationAt.mass,
	vapourConcentrationAt.share,
	timeWeightedAverage.share,
	timeWeightedAverage.mass,
	mixtureExposure.share,
	mixtureExposure.mass,
	maximumUse.share,
	maximumUse.mass,
	smallestProtection.share,
	smallestProtection.mass,
	noiseExposure.osha.duration,
	noiseExposure.osha.average,
	noiseExposure.osha.dose,
	noiseExposure.niosh.duration,
	noiseExposure.niosh.average,
	noiseExposure.niosh.dose,
	addedSound,
	...Object.values(hearingProtector)
];

import type { FormulaNote } from '../formula-note';
import { boothFlow } from './booth-flow';
import { dilutionAir } from './dilution-air';
import { dilutionFlow } from './dilution-flow';
import { explosionReliefArea } from './explosion-relief-area';
import { hotExplosiveLimit } from './hot-explosive-limit';
import { mixtureExplosiveLimit } from './mixture-explosive-limit';
import { ovenAir } from './oven-air';
import { ovenSolventLoad } from './oven-solvent-load';
import { ovenVapourShare } from './oven-vapour-share';
import { purge } from './purge';
import { solventIntoOven } from './solvent-into-oven';
import { vapourVolume } from './vapour-volume';

/** In the order they are shown. */
export const solventFormulas: readonly FormulaNote[] = [
	solventIntoOven,
	vapourVolume,
	ovenSolventLoad,
	ovenVapourShare,
	hotExplosiveLimit,
	dilutionAir,
	dilutionFlow,
	ovenAir.amount,
	ovenAir.rate,
	explosionReliefArea,
	mixtureExplosiveLimit,
	purge.time,
	purge.remaining,
	boothFlow
];

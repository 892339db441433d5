import type { Provenance } from '../sources/provenance';
import type { Text } from '../text';
import type { Dimension } from '../units/dimension';
import { batchVolume } from './batch-volume';
import { biot } from './biot';
import { bodyDepth } from './body-depth';
import { boothFlow } from './booth-flow';
import { cupViscosity } from './cup-viscosity';
import { cureEquivalence } from './cure-equivalence';
import { dewPoint } from './dew-point';
import { dilutionAir } from './dilution-air';
import { dryFilm } from './dry-film';
import { filmFromMass } from './film-from-mass';
import { filmPerPass } from './film-per-pass';
import { fitGrowth } from './fit-growth';
import { hardenerError } from './hardener-error';
import { hardenerForBase } from './hardener-for-base';
import { heatUpTime } from './heat-up-time';
import { hotExplosiveLimit } from './hot-explosive-limit';
import { mixSplit } from './mix-split';
import { noiseExposure } from './noise-exposure';
import { ovenSolventLoad } from './oven-solvent-load';
import { ovenVapourShare } from './oven-vapour-share';
import { partArea } from './part-area';
import { partTemperatureAfter } from './part-temperature-after';
import { potLifeAt } from './pot-life-at';
import { radiantHeatUpTime } from './radiant-heat-up-time';
import { radiationCoefficient } from './radiation-coefficient';
import { ratioByMass } from './ratio-by-mass';
import { ratioByVolume } from './ratio-by-volume';
import { ratioError } from './ratio-error';
import { saturationPressure } from './saturation-pressure';
import { solventIntoOven } from './solvent-into-oven';
import { spotLimits } from './spot-limits';
import { spreadingRate } from './spreading-rate';
import { strokes } from './strokes';
import { vapourConcentration } from './vapour-concentration';
import { vapourVolume } from './vapour-volume';
import { wetFilm } from './wet-film';

/** What a formula or a procedure says of itself, without its inputs' types. */
export type FormulaNote = {
	readonly id: string;
	readonly title: Text;
	readonly equation: string;
	readonly source: Provenance;
	readonly inputs: Readonly<Record<string, Dimension>>;
	/** Left out where a computation gives more than one number. */
	readonly gives?: Dimension;
	readonly validFor: Readonly<Record<string, readonly [number, number]>>;
};

/** Every formula of the engine, for the pages that show where numbers come from. */
export const FORMULAS: readonly FormulaNote[] = [
	...Object.values(mixSplit.volume),
	...Object.values(mixSplit.mass),
	hardenerForBase.volume,
	hardenerForBase.mass,
	ratioByMass,
	ratioByVolume,
	ratioError,
	hardenerError,
	potLifeAt,
	...Object.values(cupViscosity),
	...Object.values(partArea),
	batchVolume,
	spreadingRate,
	wetFilm,
	dryFilm,
	filmPerPass,
	strokes,
	filmFromMass,
	fitGrowth.diameter,
	fitGrowth.thread,
	spotLimits.lowest,
	spotLimits.highest,
	dewPoint,
	saturationPressure,
	solventIntoOven,
	vapourVolume,
	ovenSolventLoad,
	ovenVapourShare,
	hotExplosiveLimit,
	dilutionAir,
	boothFlow,
	vapourConcentration,
	bodyDepth,
	biot,
	heatUpTime,
	radiantHeatUpTime,
	partTemperatureAfter,
	radiationCoefficient,
	cureEquivalence,
	noiseExposure.osha.duration,
	noiseExposure.osha.average,
	noiseExposure.niosh.duration,
	noiseExposure.niosh.average
];

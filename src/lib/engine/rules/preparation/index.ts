import type { Rule } from '../rule';
import bakeOutTemperature from './bake-out-temperature';
import bakeOutTime from './bake-out-time';
import blastPressure from './blast-pressure';
import blastStandOff from './blast-stand-off';
import blastToCoatClock from './blast-to-coat-clock';
import blindHoleDown from './blind-hole-down';
import cleanHandlingGloves from './clean-handling-gloves';
import cleanerSuitsMaterial from './cleaner-suits-material';
import ironFreeMedia from './iron-free-media';
import laminateScuffPaper from './laminate-scuff-paper';
import mediaSuitsMetal from './media-suits-metal';
import nozzleCompressorCarries from './nozzle-compressor-carries';
import overdueStartsAgain from './overdue-starts-again';
import preparationOrder from './preparation-order';
import profileUnderHalfFilm from './profile-under-half-film';
import residueRepeatsLoop from './residue-repeats-loop';
import scuffInsteadOfBlasting from './scuff-instead-of-blasting';
import waterBreakWholeMinute from './water-break-whole-minute';
import wetPolymerDried from './wet-polymer-dried';

/** In working order. */
export const preparationRules: readonly Rule[] = [
	cleanHandlingGloves,
	cleanerSuitsMaterial,
	preparationOrder,
	waterBreakWholeMinute,
	mediaSuitsMetal,
	scuffInsteadOfBlasting,
	ironFreeMedia,
	blastPressure,
	nozzleCompressorCarries,
	blastStandOff,
	profileUnderHalfFilm,
	laminateScuffPaper,
	blastToCoatClock,
	overdueStartsAgain,
	bakeOutTemperature,
	bakeOutTime,
	residueRepeatsLoop,
	wetPolymerDried,
	blindHoleDown
];

import type { Rule } from '../rule';
import clockStartsOnPart from './clock-starts-on-part';
import coolBeforeHandling from './cool-before-handling';
import cureBelowPartLimit from './cure-below-part-limit';
import curePartTemperature from './cure-part-temperature';
import flashTime from './flash-time';
import heatUpBeforeSoak from './heat-up-before-soak';
import holdTime from './hold-time';
import probeHeaviestAndThinnest from './probe-heaviest-and-thinnest';
import unlikePartsSplit from './unlike-parts-split';

/** In working order. */
export const curingRules: readonly Rule[] = [
	flashTime,
	unlikePartsSplit,
	probeHeaviestAndThinnest,
	curePartTemperature,
	cureBelowPartLimit,
	heatUpBeforeSoak,
	clockStartsOnPart,
	holdTime,
	coolBeforeHandling
];

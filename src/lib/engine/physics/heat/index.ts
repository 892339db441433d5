import type { FormulaNote } from '../formula-note';
import { biot } from './biot';
import { bodyDepth } from './body-depth';
import { coreHeatUpTime } from './core-heat-up-time';
import { fourier } from './fourier';
import { heatModel } from './heat-model';
import { heatUpTime } from './heat-up-time';
import { partTemperatureAfter } from './part-temperature-after';
import { rackHeatUp } from './rack-heat-up';
import { radiantHeatUpTime } from './radiant-heat-up-time';
import { radiationCoefficient } from './radiation-coefficient';
import { thermalDiffusivity } from './thermal-diffusivity';
import { wallHeatUp } from './wall-heat-up';
import { wallTemperatureAfter } from './wall-temperature-after';
import { wallTerms } from './wall-terms';

/** In the order they are shown. */
export const heatFormulas: readonly FormulaNote[] = [
	bodyDepth,
	biot,
	heatUpTime,
	radiantHeatUpTime,
	partTemperatureAfter,
	radiationCoefficient,
	thermalDiffusivity,
	fourier,
	heatModel,
	wallTerms,
	wallTemperatureAfter,
	coreHeatUpTime,
	wallHeatUp,
	rackHeatUp
];

import type { FormulaNote } from '../formula-note';
import { absoluteHumidity } from './absolute-humidity';
import { atmosphericDewPoint } from './atmospheric-dew-point';
import { dewPoint } from './dew-point';
import { dewPointMargin } from './dew-point-margin';
import { highestHumidity } from './highest-humidity';
import { humidityFromDewPoint } from './humidity-from-dew-point';
import { humidityFromWetBulb } from './humidity-from-wet-bulb';
import { pressureDewPoint } from './pressure-dew-point';
import { saturationPressure } from './saturation-pressure';
import { saturationPressureIce } from './saturation-pressure-ice';
import { saturationTemperature } from './saturation-temperature';
import { vapourPressure } from './vapour-pressure';

/** In the order they are shown. */
export const humidityFormulas: readonly FormulaNote[] = [
	dewPoint,
	saturationPressure,
	humidityFromDewPoint,
	humidityFromWetBulb,
	absoluteHumidity,
	dewPointMargin,
	highestHumidity,
	saturationPressureIce,
	vapourPressure,
	saturationTemperature,
	atmosphericDewPoint,
	pressureDewPoint
];

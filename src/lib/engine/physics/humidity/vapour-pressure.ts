import { cite } from '../../sources/provenance';
import { celsius } from '../../units/construct';
import { defineFormula } from '../formula';
import { saturationPressure } from './saturation-pressure';
import { saturationPressureIce } from './saturation-pressure-ice';

/** Where ice, water and vapour meet: the branches over ice and over water change there. */
const TRIPLE_POINT = celsius(0.01);

/** Pressure of the water vapour in air of this dew point; below the triple point `dew` is a frost point. */
export const vapourPressure = defineFormula({
	id: 'vapour-pressure',
	title: { en: 'Water vapour at a dew or frost point', es: 'Vapor de agua a un punto de rocío o escarcha' },
	equation: 'e = p(saturation) at the dew point, over ice below 0.01 °C',
	source: cite(
		'ashrae-fundamentals-2017',
		'ch. 1, eq. 5 and 6',
		{ read: 'coefficients in an open-source psychrometrics library' },
		'handbook'
	),
	inputs: { dew: 'temperature' },
	gives: 'pressure',
	validFor: { dew: [celsius(-100), celsius(200)] },
	compute: ({ dew }) => (dew < TRIPLE_POINT ? saturationPressureIce : saturationPressure).at({ air: dew })
});

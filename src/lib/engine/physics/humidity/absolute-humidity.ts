import { cite } from '../../sources/provenance';
import { celsius } from '../../units/construct';
import { GAS_CONSTANT, WATER_MOLAR_MASS } from '../constants';
import { defineFormula } from '../formula';
import { saturationPressure } from './saturation-pressure';

/** Water in a cubic metre of air, as vapour: the ideal gas at its own partial pressure. */
export const absoluteHumidity = defineFormula({
	id: 'absolute-humidity',
	title: { en: 'Water in the air', es: 'Agua en el aire' },
	equation: 'ρ = RH · e(T) · M/(R · T)',
	source: cite(
		'ashrae-fundamentals-2017',
		'ch. 1, saturation pressure, with the ideal gas',
		{ read: 'coefficients in an open-source psychrometrics library' },
		'handbook'
	),
	inputs: { air: 'temperature', humidity: 'fraction' },
	gives: 'density',
	validFor: { air: [celsius(0.01), celsius(60)], humidity: [0, 1] },
	compute: ({ air, humidity }) =>
		(humidity * saturationPressure.at({ air }) * WATER_MOLAR_MASS) / (GAS_CONSTANT * air)
});

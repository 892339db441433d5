import { cite } from '../../sources/provenance';
import { GAS_CONSTANT } from '../constants';
import { defineFormula } from '../formula';
import { TEMPERATURE } from '../heat/lumped-body';

/**
 * Activation energy of a reaction from how many times faster it runs at the warmer of two temperatures. One energy does
 * not make a rate double every ten degrees everywhere: about 53 kJ/mol does near 25 °C, about 100 near 145 °C, so the
 * pot-life rule says nothing about an oven. Throws a RangeError where the second temperature is not the warmer one.
 */
export const activationEnergy = defineFormula({
	id: 'activation-energy',
	title: { en: 'Activation energy from two rates', es: 'Energía de activación a partir de dos velocidades' },
	equation: 'E = R · ln(k₂/k₁)/(1/T₁ − 1/T₂)',
	source: cite(
		'openstax-chemistry',
		'§12.5, two-point form of the Arrhenius equation',
		{ read: 'section and answers' },
		'handbook'
	),
	inputs: { times: 'ratio', cooler: 'temperature', warmer: 'temperature' },
	gives: 'molar-energy',
	validFor: { times: [1, 1e12], cooler: TEMPERATURE, warmer: TEMPERATURE },
	compute({ times, cooler, warmer }) {
		if (!(warmer > cooler))
			throw new RangeError(`activation-energy: warmer = ${warmer} must be above cooler = ${cooler} (SI)`);
		return (GAS_CONSTANT * Math.log(times)) / (1 / cooler - 1 / warmer);
	}
});

import { cite } from '../../sources/provenance';
import { STEFAN_BOLTZMANN } from '../constants';
import { defineFormula } from '../formula';
import { TEMPERATURE } from './lumped-body';

/** What radiation adds to the heat-transfer coefficient between a grey part and walls all around it. */
export const radiationCoefficient = defineFormula({
	id: 'radiation-coefficient',
	title: { en: 'Heat transfer by radiation', es: 'Transferencia de calor por radiación' },
	equation: 'h(r) = εσ(T + T₂)(T² + T₂²)',
	source: cite('incropera-heat', 'eq. 1.9', { read: 'as worked in example 5.3' }, 'handbook'),
	inputs: { emissivity: 'fraction', part: 'temperature', walls: 'temperature' },
	gives: 'heat-transfer',
	validFor: { emissivity: [0, 1], part: TEMPERATURE, walls: TEMPERATURE },
	compute: ({ emissivity, part, walls }) =>
		emissivity * STEFAN_BOLTZMANN * (part + walls) * (part ** 2 + walls ** 2)
});

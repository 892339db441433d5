import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';

/**
 * Pressure above vacuum of a line whose gauge reads against the air around it. Ratios of pressures, and with them
 * every flow through a nozzle, are of absolute pressures.
 */
export const absolutePressure = defineFormula({
	id: 'absolute-pressure',
	title: { en: 'Absolute pressure', es: 'Presión absoluta' },
	equation: 'p = p(gauge) + p(air)',
	source: arithmetic('definition of gauge pressure'),
	inputs: { gauge: 'pressure', air: 'pressure' },
	gives: 'pressure',
	validFor: { gauge: [0, 2e6], air: [60e3, 110e3] },
	compute: ({ gauge, air }) => gauge + air
});

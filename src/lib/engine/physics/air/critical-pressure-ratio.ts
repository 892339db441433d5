import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';

/**
 * Downstream over upstream absolute pressure at which a gas reaches the speed of sound in the throat. At or below it
 * the flow is choked: a lower pressure outside draws no more gas through. `heatRatio` is cp/cv, 1.4 for air.
 */
export const criticalPressureRatio = defineFormula({
	id: 'critical-pressure-ratio',
	title: { en: 'Pressure ratio at which a nozzle chokes', es: 'Relación de presiones de flujo sónico' },
	equation: 'r* = (2/(γ + 1))^(γ/(γ − 1))',
	source: cite(
		'moran-thermal-systems',
		'isentropic flow through a nozzle',
		{ read: 'equation as worked in an open textbook-companion project' },
		'handbook'
	),
	inputs: { heatRatio: 'ratio' },
	gives: 'fraction',
	validFor: { heatRatio: [1.05, 1.67] },
	compute: ({ heatRatio: k }) => (2 / (k + 1)) ** (k / (k - 1))
});

import { cite } from '../../sources/provenance';
import type { Metre } from '../../units/dimension';
import { defineProcedure } from '../procedure';

/**
 * Standard uncertainties from causes that do not depend on each other, together: the root of the sum of their squares. One
 * for each cause, in metres: scatter of the readings, calibration of the gauge, zero on this surface.
 */
export const combinedUncertainty = defineProcedure<{ parts: readonly Metre[] }, Metre>({
	id: 'combined-uncertainty',
	title: { en: 'Uncertainty of all causes together', es: 'Incertidumbre de todas las causas juntas' },
	equation: 'u = √(u₁² + u₂² + …)',
	source: cite('jcgm-100', '5.1.2'),
	inputs: { parts: 'length' },
	validFor: { parts: [0, 1e3] },
	compute: ({ parts }) => Math.hypot(...parts) as Metre
});

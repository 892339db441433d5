import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';

/**
 * How far heat has come into a wall in a time: α·t/L², L half the thickness of a wall heated from both faces, or the
 * whole of one whose other face is insulated. Above about 0.2 the shape of the profile no longer changes.
 */
export const fourier = defineFormula({
	id: 'fourier',
	title: { en: 'Fourier number', es: 'Número de Fourier' },
	equation: 'Fo = α · t/L²',
	source: cite('incropera-heat', 'eq. 5.12', { read: 'as worked in example 5.4' }, 'handbook'),
	inputs: { diffusivity: 'diffusivity', spent: 'duration', depth: 'length' },
	gives: 'fraction',
	validFor: { diffusivity: [1e-9, 1e-3], spent: [0, 604_800], depth: [1e-6, 2] },
	compute: ({ diffusivity, spent, depth }) => (diffusivity * spent) / depth ** 2
});

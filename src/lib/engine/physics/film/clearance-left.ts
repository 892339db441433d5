import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';

/**
 * Play left between a bore and the shaft in it, on the diameter, after both are coated; one left bare has a film of 0. Negative
 * where they no longer go together. Diameters 0.5 mm to 5 m, films to 1 mm.
 */
export const clearanceLeft = defineFormula({
	id: 'clearance-left',
	title: { en: 'Clearance left after coating', es: 'Holgura que queda tras recubrir' },
	equation: 'clearance = (bore − 2 · DFT of the bore) − (shaft + 2 · DFT of the shaft)',
	source: arithmetic('a film on either side of each diameter'),
	inputs: { bore: 'length', boreDry: 'length', shaft: 'length', shaftDry: 'length' },
	gives: 'length',
	validFor: { bore: [5e-4, 5], boreDry: [0, 1e-3], shaft: [5e-4, 5], shaftDry: [0, 1e-3] },
	compute: ({ bore, boreDry, shaft, shaftDry }) => bore - 2 * boreDry - (shaft + 2 * shaftDry)
});

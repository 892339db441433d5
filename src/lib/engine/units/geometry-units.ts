import * as c from './construct';
import { unitsOf } from './unit';

/** Exact by definition. */
const FOOT = 0.3048;

const times = (factor: number) => (value: number) => value * factor;
const l = unitsOf('length');
const a = unitsOf('area');

/** Rulers and gauges. */
export const GEOMETRY_UNITS = {
	length: [
		l('µm', c.micrometres, {
			decimals: 1,
			also: 'um, micron, microns, micra, micras, micrometre, micrometer, micrometres, micrometers, micrómetro, micrómetros'
		}),
		l('mm', c.millimetres, {
			decimals: 2,
			also: 'millimetre, millimeter, millimetres, millimeters, milímetro, milímetros'
		}),
		l('cm', times(0.01), {
			decimals: 1,
			belowOne: 2,
			also: 'centimetre, centimeter, centimetres, centimeters, centímetro, centímetros'
		}),
		l('m', c.metres, { decimals: 2, also: 'metre, meter, metres, meters, metro, metros' }),
		l('mil', c.mils, {
			decimals: 2,
			also: 'mils, thou, milésima, milésimas, milésima de pulgada, milésimas de pulgada'
		}),
		l('in', times(0.0254), {
			es: 'pulg',
			decimals: 2,
			belowOne: 3,
			also: 'inch, inches, ", in., pulgada, pulgadas'
		}),
		l('ft', times(FOOT), { es: 'pies', decimals: 2, also: "foot, feet, ', pie" })
	],
	area: [
		a('m²', c.squareMetres, {
			decimals: 2,
			belowOne: 3,
			also: 'sq m, sqm, square metre, square meter, square metres, square meters, metro cuadrado, metros cuadrados'
		}),
		a('cm²', times(1e-4), {
			decimals: 1,
			also: 'sq cm, square centimetres, square centimeters, centímetros cuadrados'
		}),
		a('mm²', times(1e-6), { decimals: 0, also: 'sq mm' }),
		a('ft²', times(FOOT ** 2), {
			es: 'pies²',
			decimals: 2,
			also: 'sq ft, sqft, square foot, square feet, pie2, pie cuadrado, pies cuadrados'
		}),
		a('in²', times(0.0254 ** 2), {
			es: 'pulg²',
			decimals: 1,
			also: 'sq in, square inch, square inches, pulgada cuadrada, pulgadas cuadradas'
		})
	]
} as const;

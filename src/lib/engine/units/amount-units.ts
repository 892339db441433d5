import * as c from './construct';
import { unitsOf } from './unit';

/** Exact by definition: avoirdupois pound and foot. */
const POUND = 0.45359237;
const FOOT = 0.3048;
const US_GALLON = c.LITRE_PER_US_GALLON * 1e-3;
const IMPERIAL_GALLON = c.LITRE_PER_IMPERIAL_GALLON * 1e-3;

const times = (factor: number) => (value: number) => value * factor;
const v = unitsOf('volume');
const m = unitsOf('mass');
const d = unitsOf('density');

/**
 * Cups and scales. A US pint is 16 fluid ounces and an imperial one 20, and the ounces differ too; so no fluid measure
 * goes by its bare name.
 */
export const AMOUNT_UNITS = {
	volume: [
		v('mL', c.millilitres, {
			decimals: 1,
			also: 'cc, cm3, millilitre, milliliter, millilitres, milliliters, mililitro, mililitros'
		}),
		v('L', c.litres, {
			decimals: 2,
			belowOne: 3,
			also: 'lt, lts, litre, liter, litres, liters, litro, litros'
		}),
		v('m³', c.cubicMetres, { decimals: 2, belowOne: 3, also: 'cubic metres, cubic meters, metros cúbicos' }),
		v('US fl oz', times(US_GALLON / 128), {
			es: 'oz líq. EE. UU.',
			decimals: 2,
			also: 'fl oz US, US fluid ounce, US fluid ounces, US oz, onza líquida EEUU, onzas líquidas EEUU'
		}),
		v('US pt', times(US_GALLON / 8), {
			es: 'pinta EE. UU.',
			decimals: 2,
			also: 'US pint, US pints, pt US, pintas EEUU'
		}),
		v('US qt', times(US_GALLON / 4), {
			es: 'cuarto EE. UU.',
			decimals: 2,
			also: 'US quart, US quarts, qt US, cuartos EEUU'
		}),
		v('US gal', times(US_GALLON), {
			es: 'gal EE. UU.',
			decimals: 2,
			belowOne: 3,
			also: 'US gallon, US gallons, gal US, galón EEUU, galones EEUU'
		}),
		v('imp fl oz', times(IMPERIAL_GALLON / 160), {
			es: 'oz líq. imp.',
			decimals: 2,
			also: 'fl oz imp, UK fl oz, imperial fl oz, imperial fluid ounce, imperial fluid ounces, onzas líquidas imperiales'
		}),
		v('imp pt', times(IMPERIAL_GALLON / 8), {
			es: 'pinta imp.',
			decimals: 2,
			also: 'imperial pint, imperial pints, UK pt, pintas imperiales'
		}),
		v('imp qt', times(IMPERIAL_GALLON / 4), {
			es: 'cuarto imp.',
			decimals: 2,
			also: 'imperial quart, imperial quarts, UK qt, cuartos imperiales'
		}),
		v('imp gal', times(IMPERIAL_GALLON), {
			es: 'gal imp.',
			decimals: 2,
			belowOne: 3,
			also: 'imperial gallon, imperial gallons, UK gal, galón imperial, galones imperiales'
		}),
		v('ft³', times(FOOT ** 3), {
			es: 'pies³',
			decimals: 1,
			also: 'cu ft, cubic foot, cubic feet, pies cúbicos'
		})
	],
	mass: [
		m('g', c.grams, { decimals: 1, belowOne: 2, also: 'gr, gram, grams, gramme, grammes, gramo, gramos' }),
		m('kg', c.kilograms, {
			decimals: 2,
			belowOne: 3,
			also: 'kgs, kilo, kilos, kilogram, kilograms, kilogramo, kilogramos'
		}),
		m('oz (weight)', times(POUND / 16), {
			es: 'oz (peso)',
			decimals: 2,
			also: 'oz weight, oz wt, oz av, oz avdp, ounces weight, weight oz, onzas de peso, oz peso'
		}),
		m('lb', times(POUND), { decimals: 2, belowOne: 3, also: 'lbs, pound, pounds, libra, libras' })
	],
	density: [
		d('g/mL', c.gramsPerMillilitre, {
			decimals: 2,
			also: 'g/cm3, g/cc, kg/L, grams per millilitre, gramos por mililitro'
		}),
		d('kg/m³', times(1), { decimals: 0 }),
		d('g/L', times(1), { decimals: 0 }),
		d('lb/US gal', times(POUND / US_GALLON), { es: 'lb/gal EE. UU.', decimals: 2, also: 'lbs/US gal' }),
		d('mg/m³', times(1e-6), { decimals: 2, also: 'mg/m3' }),
		d('µg/m³', times(1e-9), { decimals: 0, also: 'ug/m3, mcg/m3' })
	]
} as const;

import { unitOf } from '../../src/lib/engine/units/units';
import type { Dimension } from '../../src/lib/engine/units/dimension';
import { published } from './published';

const read = 'Appendix B.9 as copied on public pages';
const one = (dimension: Dimension, id: string) => () => unitOf(dimension, id).toSi(1);

export default [
	published('nist-sp-811', 'Appendix B.9, factors to SI', {
		of: ['units'],
		unit: 'SI',
		read,
		within: { relative: 5e-7, because: 'factors are printed to seven digits' },
		rows: [
			{ where: 'psi to pascal', expected: 6.894757e3, actual: one('pressure', 'psi') },
			{ where: 'bar to pascal', expected: 1e5, actual: one('pressure', 'bar') },
			{ where: 'mil to metre', expected: 2.54e-5, actual: one('length', 'mil') },
			{ where: 'inch to metre', expected: 2.54e-2, actual: one('length', 'in') },
			{ where: 'foot to metre', expected: 3.048e-1, actual: one('length', 'ft') },
			{ where: 'square foot to square metre', expected: 9.290304e-2, actual: one('area', 'ft²') },
			{ where: 'square inch to square metre', expected: 6.4516e-4, actual: one('area', 'in²') },
			{ where: 'gallon (U.S.) to cubic metre', expected: 3.785412e-3, actual: one('volume', 'US gal') },
			{ where: 'gallon (Imperial) to cubic metre', expected: 4.54609e-3, actual: one('volume', 'imp gal') },
			{
				where: 'fluid ounce (U.S.) to cubic metre',
				expected: 2.957353e-5,
				actual: one('volume', 'US fl oz')
			},
			{
				where: 'fluid ounce (Imperial) to cubic metre',
				expected: 2.841306e-5,
				actual: one('volume', 'imp fl oz')
			},
			{ where: 'pint (U.S. liquid) to cubic metre', expected: 4.731765e-4, actual: one('volume', 'US pt') },
			{ where: 'quart (U.S. liquid) to cubic metre', expected: 9.463529e-4, actual: one('volume', 'US qt') },
			{ where: 'cubic foot to cubic metre', expected: 2.831685e-2, actual: one('volume', 'ft³') }
		]
	}),
	published('nist-sp-811', 'Appendix B.8, factors not seen again', {
		of: ['units'],
		unit: 'SI',
		read: 'memory',
		within: { relative: 5e-7, because: 'factors are printed to seven digits' },
		rows: [
			{ where: 'pound to kilogram', expected: 4.535924e-1, actual: one('mass', 'lb') },
			{ where: 'ounce (avoirdupois) to kilogram', expected: 2.834952e-2, actual: one('mass', 'oz (weight)') },
			{ where: 'foot per minute to metre per second', expected: 5.08e-3, actual: one('speed', 'ft/min') },
			{ where: 'cubic foot per minute', expected: 4.719474e-4, actual: one('flow', 'cfm') },
			{ where: 'pound per gallon (U.S.)', expected: 1.198264e2, actual: one('density', 'lb/US gal') }
		]
	})
];

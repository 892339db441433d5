import Qty from 'js-quantities';
import type { Dimension } from '../../src/lib/engine/units/dimension';
import { unitOf } from '../../src/lib/engine/units/units';
import { parseQuantity } from '../../src/lib/engine/units/parse';
import { published } from './published';

const read = 'library js-quantities 1.8.0, run in this test';
const si = (typed: string, dimension: Dimension) => () => {
	const parsed = parseQuantity(typed, dimension);
	return parsed.ok ? parsed.value : NaN;
};
const one = (dimension: Dimension, id: string) => () => unitOf(dimension, id).toSi(1);
const theirs = (typed: string, base: string) => Qty(typed).to(base).scalar;

export default [
	published('js-quantities', 'units as typed, to SI', {
		of: ['units'],
		unit: 'SI',
		read,
		within: { relative: 1e-6, because: 'the library holds its factors to seven digits or more' },
		rows: [
			{ where: '85 inches', expected: theirs('85 in', 'm'), actual: si('85 inches', 'length') },
			{ where: '0.8 mil', expected: theirs('0.8 mil', 'm'), actual: si('0.8 mil', 'length') },
			{ where: '12 ft²', expected: theirs('12 ft2', 'm2'), actual: si('12 ft²', 'area') },
			{ where: '20 US fl oz', expected: theirs('20 floz', 'm3'), actual: si('20 US fl oz', 'volume') },
			{ where: '2 US gal', expected: theirs('2 gal', 'm3'), actual: si('2 US gal', 'volume') },
			{ where: '1 imperial gallon', expected: theirs('1 galimp', 'm3'), actual: one('volume', 'imp gal') },
			{ where: '16 lb', expected: theirs('16 lbs', 'kg'), actual: si('16 lb', 'mass') },
			{
				where: '300 °F, a point',
				expected: theirs('300 tempF', 'tempK'),
				actual: si('300°F', 'temperature')
			},
			{
				where: '5 °F, a difference',
				expected: theirs('5 degF', 'degK'),
				actual: si('5 °F', 'temperature-difference')
			},
			{ where: '5,9 bar', expected: theirs('5.9 bar', 'Pa'), actual: si('5,9 bar', 'pressure') }
		]
	}),
	published('js-quantities', 'pound per square inch', {
		of: ['units'],
		unit: 'Pa',
		read,
		within: { relative: 1e-5, because: 'the library holds psi to six digits' },
		rows: [{ where: '85 psi', expected: theirs('85 psi', 'Pa'), actual: si('85 psi', 'pressure') }]
	})
];

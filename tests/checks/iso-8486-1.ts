import { gritSize } from '../../src/lib/engine/physics/grain/grit-size';
import { count } from '../../src/lib/engine/units/construct';
import { published } from './published';

const mean = (number: number) => gritSize['fepa-f'].at({ number: count(number) }).size * 1e6;
const between = (number: number, low: number, high: number) => ({
	where: `F${number}: between ${low} and ${high} µm`,
	expected: true,
	actual: () => mean(number) > low && mean(number) < high
});

export default [
	published('iso-8486-1', 'the mean lies between the sieves that bound the grain', {
		of: ['grit-size-fepa-f'],
		unit: '',
		read: 'sieve limits of F80 and F180 as quoted on pages about abrasives',
		within: { absolute: 0, because: 'between or not' },
		rows: [between(80, 150, 212), between(180, 53, 90)]
	}),
	published('iso-8486-1', 'average size of F80', {
		of: ['grit-size-fepa-f'],
		unit: 'µm',
		read: 'page on grit sizes',
		within: { relative: 0.03, because: 'the page rounds to the nearest sieve' },
		rows: [{ where: 'F80', expected: 180, actual: () => mean(80) }]
	})
];

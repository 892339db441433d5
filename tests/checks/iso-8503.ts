import { comparators } from '../../src/lib/engine/physics/grain/comparator-grade';
import { micrometres } from '../../src/lib/engine/units/construct';
import { published } from './published';

type Kind = keyof typeof comparators;

const segment = (kind: Kind, number: 1 | 2 | 3 | 4, profile: number) => ({
	where: `${kind}, segment ${number}`,
	expected: profile,
	actual: () => comparators[kind].segments[number - 1]! * 1e6
});
const graded = (kind: Kind, profile: number, expected: string) => ({
	where: `${kind}, ${profile} µm`,
	expected,
	actual: () => comparators[kind].grade.at({ profile: micrometres(profile) })
});

const of = ['comparator-grade-grit', 'comparator-grade-shot'];

export default [
	published('iso-8503', 'nominal profiles of the comparators', {
		of,
		unit: 'µm',
		read: 'data sheet of a comparator',
		within: { absolute: 1e-6, because: 'a table, so nothing but rounding in the last bit' },
		rows: [
			segment('grit', 1, 25),
			segment('grit', 2, 60),
			segment('grit', 4, 150),
			segment('shot', 2, 40),
			segment('shot', 3, 70)
		]
	}),
	published('iso-8503', 'grades: from one segment up to, excluding, the next', {
		of,
		unit: '',
		read: 'instructions of a comparator',
		within: { absolute: 0, because: 'a grade or another' },
		rows: [
			graded('grit', 20, 'finer-than-fine'),
			graded('grit', 25, 'fine'),
			graded('grit', 60, 'medium'),
			graded('shot', 70, 'coarse'),
			graded('shot', 100, 'coarser-than-coarse')
		]
	})
];

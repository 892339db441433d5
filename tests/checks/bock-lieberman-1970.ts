import { formStatistics, itemStatistics } from '$lib/learning';
import { published } from './published';

/** Persons by pattern of answers, 00000 to 11111 with the first item in front, as the packages hold them. */
const PERSONS = [
	3, 6, 2, 11, 1, 1, 3, 4, 1, 8, 0, 16, 0, 3, 2, 15, 10, 29, 14, 81, 3, 28, 15, 80, 16, 56, 21, 173, 11, 61,
	28, 298
];
const ITEMS = ['1', '2', '3', '4', '5'];

const sheets = PERSONS.flatMap((persons, pattern) => {
	const answers = pattern.toString(2).padStart(ITEMS.length, '0');
	const sheet = new Map(ITEMS.map((item, at) => [item, answers[at] === '1']));
	return Array.from({ length: persons }, () => sheet);
});

const form = () => {
	const found = formStatistics(sheets);
	if ('refused' in found) throw new Error(found.refused);
	return found;
};

const item = (id: string) => {
	const found = itemStatistics(sheets, id);
	if ('refused' in found) throw new Error(found.refused);
	return found;
};

const READ = 'data and statistics as held in open statistics packages';
const threeDigits = { absolute: 0.0005, because: 'three printed digits' };

const printed = (
	title: string,
	expected: readonly number[],
	actual: (id: string) => number | null | undefined
) =>
	published('bock-lieberman-1970', title, {
		of: ['proving'],
		unit: '',
		within: threeDigits,
		read: READ,
		rows: ITEMS.map((id, at) => ({
			where: `item ${id}`,
			expected: expected[at]!,
			actual: () => actual(id) ?? NaN
		}))
	});

export default [
	printed('LSAT section 6: share right', [0.924, 0.709, 0.553, 0.763, 0.87], (id) => item(id).share),
	printed(
		'LSAT section 6: item–total correlation',
		[0.362, 0.567, 0.618, 0.534, 0.435],
		(id) => item(id).itemTotal
	),
	printed(
		'LSAT section 6: item–rest correlation',
		[0.113, 0.153, 0.173, 0.144, 0.122],
		(id) => item(id).itemRest
	),
	printed('LSAT section 6: alpha without the item', [0.275, 0.238, 0.217, 0.246, 0.266], (id) =>
		form().alphaWithout.get(id)
	),
	published('bock-lieberman-1970', 'LSAT section 6: the whole form', {
		of: ['proving'],
		unit: '',
		within: threeDigits,
		read: READ,
		rows: [
			{ where: 'persons', expected: 1000, actual: () => form().n },
			{ where: 'mean', expected: 3.819, actual: () => form().mean },
			{ where: 'standard deviation', expected: 1.035, actual: () => form().sd },
			{ where: 'alpha', expected: 0.295, actual: () => form().alpha },
			{ where: 'standard error of measurement', expected: 0.869, actual: () => form().sem }
		]
	})
];

import { gritSize } from '../../src/lib/engine/physics/grain/grit-size';
import { count } from '../../src/lib/engine/units/construct';
import { published } from './published';

const row = (number: number, micrometres: number) => ({
	where: `${number}`,
	expected: micrometres,
	actual: () => gritSize['ansi-b74-18'].at({ number: count(number) }).size * 1e6
});

export default [
	published('ansi-b74-18', 'average sizes of US coated grits', {
		of: ['grit-size-ansi-b74-18'],
		unit: 'µm',
		read: 'table on a reference page about sandpaper',
		within: { absolute: 1e-6, because: 'a table, so nothing but rounding in the last bit' },
		rows: [row(24, 715), row(40, 428), row(60, 268), row(80, 192), row(100, 141)]
	}),
	published('ansi-b74-18', 'average sizes in another comparison', {
		of: ['grit-size-ansi-b74-18'],
		unit: 'µm',
		read: 'comparison on a wood-finishing page',
		within: { absolute: 2.1, because: 'in whole micrometres, the coarser ones rounded to tens' },
		rows: [row(40, 430), row(50, 350), row(80, 192), row(120, 116), row(150, 93)]
	})
];

import { gritSize } from '../../src/lib/engine/physics/grain/grit-size';
import { count } from '../../src/lib/engine/units/construct';
import { published } from './published';

const row = (number: number, micrometres: number) => ({
	where: `P${number}`,
	expected: micrometres,
	actual: () => gritSize['fepa-p'].at({ number: count(number) }).size * 1e6
});

export default [
	published('iso-6344', 'mean sizes of P grits', {
		of: ['grit-size-fepa-p'],
		unit: 'µm',
		read: 'table on a reference page about sandpaper',
		within: { absolute: 1e-6, because: 'a table, so nothing but rounding in the last bit' },
		rows: [row(12, 1815), row(36, 538), row(60, 269), row(80, 201), row(100, 162), row(120, 125)]
	}),
	published('iso-6344', 'mean sizes of P grits in another comparison', {
		of: ['grit-size-fepa-p'],
		unit: 'µm',
		read: 'comparison on a wood-finishing page',
		within: { absolute: 1.1, because: 'in whole micrometres, some rounded to tens' },
		rows: [row(80, 200), row(180, 82), row(320, 46), row(400, 35), row(1500, 13)]
	})
];

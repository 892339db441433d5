import { blastNozzleAir } from '../../src/lib/engine/physics/air/blast-nozzle-air';
import { compressorPower } from '../../src/lib/engine/physics/air/compressor-power';
import { wornNozzleAir } from '../../src/lib/engine/physics/air/worn-nozzle-air';
import { fraction, metres, psi } from '../../src/lib/engine/units/construct';
import type { CubicMetrePerSecond } from '../../src/lib/engine/units/dimension';
import { published } from './published';

const CFM = 0.3048 ** 3 / 60;
const HORSEPOWER = 745.7;
const read = 'chart, metered while blasting, and its notes';
const inch = (inches: number) => metres(inches * 0.0254);
const flow = (cfm: number) => (cfm * CFM) as CubicMetrePerSecond;

const air = (name: string, inches: number, gauge: number, cfm: number) => ({
	where: `${name} in at ${gauge} psi`,
	expected: cfm,
	actual: () =>
		blastNozzleAir.at({ bore: inch(inches), gauge: psi(gauge), coefficient: fraction(0.78) }) / CFM
});
const power = (cfm: number, hp: number) => ({
	where: `${cfm} cfm`,
	expected: hp,
	actual: () => compressorPower.at({ air: flow(cfm) }) / HORSEPOWER
});
const worn = (name: string, inches: number, cfm: number) => ({
	where: `1/4 in, 81 cfm at 100 psi, worn to ${name} in`,
	expected: cfm,
	actual: () => wornNozzleAir.at({ air: flow(81), bore: inch(1 / 4), worn: inch(inches) }) / CFM
});

export default [
	published('blast-nozzle-chart', 'air a nozzle takes while blasting', {
		of: ['blast-nozzle-air'],
		unit: 'cfm',
		read,
		within: { relative: 0.09, because: 'one coefficient for all bores; the chart itself wanders by so much' },
		rows: [
			air('1/8', 1 / 8, 50, 11),
			air('1/8', 1 / 8, 80, 17),
			air('3/16', 3 / 16, 70, 33),
			air('1/4', 1 / 4, 100, 81),
			air('5/16', 5 / 16, 90, 126),
			air('3/8', 3 / 8, 60, 126)
		]
	}),
	published('blast-nozzle-chart', 'compressor horsepower for that air', {
		of: ['compressor-power'],
		unit: 'hp',
		read,
		within: { absolute: 0.7, because: 'printed in whole horsepower, some rounded up' },
		rows: [power(81, 18), power(137, 31), power(196, 44), power(280, 62), power(338, 75)]
	}),
	published('blast-nozzle-chart', 'air of the next sizes up, as of a worn nozzle', {
		of: ['worn-nozzle-air'],
		table: 'nozzles at 100 psi',
		unit: 'cfm',
		read,
		within: { relative: 0.09, because: 'wider nozzles of the chart run at a higher coefficient' },
		rows: [worn('5/16', 5 / 16, 137), worn('3/8', 3 / 8, 196)]
	})
];

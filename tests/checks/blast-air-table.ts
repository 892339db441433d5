import { blastNozzleAir } from '../../src/lib/engine/physics/air/blast-nozzle-air';
import { fraction, metres, psi } from '../../src/lib/engine/units/construct';
import { published } from './published';

const CFM = 0.3048 ** 3 / 60;

const air = (name: string, inches: number, gauge: number, cfm: number) => ({
	where: `${name} in at ${gauge} psig`,
	expected: cfm,
	actual: () =>
		blastNozzleAir.at({ bore: metres(inches * 0.0254), gauge: psi(gauge), coefficient: fraction(0.78) }) / CFM
});

export default published('blast-air-table', 'air of pressure blast systems', {
	of: ['blast-nozzle-air'],
	unit: 'cfm',
	read: 'row of the smallest nozzle, and the 5/16 in nozzle of the text',
	within: { relative: 0.1, because: 'called an approximation, in whole cfm' },
	rows: [
		air('1/8', 1 / 8, 60, 14),
		air('1/8', 1 / 8, 80, 17),
		air('1/8', 1 / 8, 90, 19),
		air('1/8', 1 / 8, 100, 20),
		air('5/16', 5 / 16, 100, 137)
	]
});

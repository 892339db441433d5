import { chokedAirFlow } from '../../src/lib/engine/physics/air/choked-air-flow';
import { freeAir } from '../../src/lib/engine/physics/air/free-air';
import { handbookOrificeFlow } from '../../src/lib/engine/physics/air/handbook-orifice-flow';
import { subcriticalAirFlow } from '../../src/lib/engine/physics/air/subcritical-air-flow';
import { fahrenheit, fraction, pascal, psi, squareMetres } from '../../src/lib/engine/units/construct';
import type { KilogramPerSecond } from '../../src/lib/engine/units/dimension';
import { published } from './published';

const OUTSIDE = psi(14.7);
const TEMPERATURE = fahrenheit(70);
const CFM = 0.3048 ** 3 / 60;

/** What the table holds constant: coefficient 1, 70 °F, into air of 14.7 psia. */
const orifice = (inches: number, gauge: number) => ({
	area: squareMetres((Math.PI / 4) * (inches * 0.0254) ** 2),
	coefficient: fraction(1),
	upstream: pascal(psi(gauge) + OUTSIDE),
	temperature: TEMPERATURE
});
const cfm = (flow: KilogramPerSecond) =>
	freeAir.at({ flow, temperature: TEMPERATURE, pressure: OUTSIDE }) / CFM;

const row =
	(through: (inches: number, gauge: number) => KilogramPerSecond) =>
	(inches: number, gauge: number, expected: number) => ({
		where: `${inches} in, ${gauge} psig`,
		expected,
		actual: () => cfm(through(inches, gauge))
	});
const handbook = row((inches, gauge) =>
	handbookOrificeFlow.at({ ...orifice(inches, gauge), barometer: OUTSIDE })
);
const sonic = row((inches, gauge) => chokedAirFlow.at({ ...orifice(inches, gauge), downstream: OUTSIDE }));
const slow = row((inches, gauge) =>
	subcriticalAirFlow.at({ ...orifice(inches, gauge), downstream: OUTSIDE })
);

const table = 'discharge of air through an orifice';
const read = 'stored copy of the table';

export default [
	published('orifice-air-table', 'free air at high pressure by the handbook’s own formula', {
		of: ['handbook-orifice-flow', 'free-air'],
		table,
		unit: 'cfm',
		read,
		within: { relative: 0.004, because: 'printed to three digits, with air of 0.07494 lb/ft³' },
		rows: [
			handbook(1 / 16, 20, 1.96),
			handbook(1 / 8, 100, 26.0),
			handbook(1 / 4, 50, 58.6),
			handbook(3 / 8, 80, 193),
			handbook(1 / 2, 125, 506)
		]
	}),
	published('orifice-air-table', 'free air at high pressure by the sonic equation', {
		of: ['choked-air-flow', 'free-air'],
		table,
		unit: 'cfm',
		read,
		within: { relative: 0.006, because: 'the handbook’s formula lies 0.3 % low, printed to three digits' },
		rows: [sonic(1 / 8, 60, 16.9), sonic(1 / 4, 100, 104), sonic(3 / 4, 70, 690)]
	}),
	published('orifice-air-table', 'free air at low pressure', {
		of: ['subcritical-air-flow', 'free-air'],
		table: `${table}, adiabatic part`,
		unit: 'cfm',
		read,
		within: { relative: 0.01, because: 'printed to three digits, by an adiabatic formula not shown' },
		rows: [slow(1 / 4, 1, 7.18), slow(1 / 8, 5, 3.97), slow(3 / 8, 9, 47.7), slow(1 / 2, 12, 97)]
	})
];

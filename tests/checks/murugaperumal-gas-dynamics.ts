import { chokedAirFlow } from '../../src/lib/engine/physics/air/choked-air-flow';
import { subcriticalAirFlow } from '../../src/lib/engine/physics/air/subcritical-air-flow';
import { bar, fraction, kelvin, pascal, squareMetres } from '../../src/lib/engine/units/construct';
import { published } from './published';

const R = 287;
const read = 'examples as worked and executed in an open textbook-companion project';
const within = { relative: 0.003, because: 'the book takes 0.528 and 0.834 from its gas tables' };
const coefficient = fraction(1);

/** Reservoir of example 2.1: 1.12 kg/m³, speed of sound 500 m/s. */
const temperature = 500 ** 2 / (1.4 * R);
const pressure = 1.12 * R * temperature;

export default [
	published('murugaperumal-gas-dynamics', 'examples 2.1 and 2.5: greatest mass flow', {
		of: ['choked-air-flow'],
		unit: 'kg/s',
		read,
		within,
		rows: [
			{
				where: '2.1, throat 10 mm',
				expected: 0.02543,
				actual: () =>
					chokedAirFlow.at({
						area: squareMetres((Math.PI / 4) * 0.01 ** 2),
						coefficient,
						upstream: pascal(pressure),
						downstream: pascal(0),
						temperature: kelvin(temperature)
					})
			},
			{
				where: '2.5, 8 bar and 15 °C, throat 25 cm²',
				expected: 4.759,
				actual: () =>
					chokedAirFlow.at({
						area: squareMetres(25e-4),
						coefficient,
						upstream: bar(8),
						downstream: pascal(0),
						temperature: kelvin(288)
					})
			}
		]
	}),
	published('murugaperumal-gas-dynamics', 'example 2.3: a convergent nozzle below sonic', {
		of: ['subcritical-air-flow'],
		unit: 'kg/s',
		read,
		within: { relative: 0.006, because: 'the book reads M = 0.64 and T/T₀ = 0.924 from its gas tables' },
		rows: [
			{
				where: '10 bar and 798 K into 7.6 bar through 1198.980 mm²',
				expected: 1.5,
				actual: () =>
					subcriticalAirFlow.at({
						area: squareMetres(1198.98e-6),
						coefficient,
						upstream: bar(10),
						downstream: bar(7.6),
						temperature: kelvin(798)
					})
			}
		]
	})
];

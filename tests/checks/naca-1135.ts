import { chokedAirFlow } from '../../src/lib/engine/physics/air/choked-air-flow';
import { criticalPressureRatio } from '../../src/lib/engine/physics/air/critical-pressure-ratio';
import { fraction, kelvin, pascal, ratio, squareMetres } from '../../src/lib/engine/units/construct';
import { published } from './published';

const read = 'values of the report in the test suite of an open-source gas-dynamics library';

export default [
	published('naca-1135', 'pressure ratio at the speed of sound', {
		of: ['critical-pressure-ratio'],
		unit: '',
		read,
		within: { absolute: 5e-5, because: 'printed to four decimals' },
		rows: [
			{
				where: 'γ = 1.4, M = 1',
				expected: 0.5283,
				actual: () => criticalPressureRatio.at({ heatRatio: ratio(1.4) })
			}
		]
	}),
	published('naca-1135', 'mass flow at the speed of sound, ṁ·√(R·T)/(A·p)', {
		of: ['choked-air-flow'],
		unit: '',
		read,
		within: { absolute: 1e-4, because: 'printed to four decimals; 287.05 J/(kg·K) of air, not 287' },
		rows: [
			{
				where: 'γ = 1.4, M = 1',
				expected: 0.6847,
				actual: () =>
					(chokedAirFlow.at({
						area: squareMetres(1e-4),
						coefficient: fraction(1),
						upstream: pascal(1e6),
						downstream: pascal(0),
						temperature: kelvin(300)
					}) *
						Math.sqrt(287.05 * 300)) /
					(1e-4 * 1e6)
			}
		]
	})
];

import { dilutionFlow } from '../../src/lib/engine/physics/solvent/dilution-flow';
import { vapourVolume } from '../../src/lib/engine/physics/solvent/vapour-volume';
import {
	fraction,
	gramsPerMillilitre,
	gramsPerMole,
	kelvin,
	ratio
} from '../../src/lib/engine/units/construct';
import type { CubicMetre, CubicMetrePerSecond } from '../../src/lib/engine/units/dimension';
import { unitOf } from '../../src/lib/engine/units/units';
import { published } from './published';

const read = 'example 20.2 as worked and run in an open textbook-companion project';
/** Toluene, 40 % of an adhesive used at 3/8 gal/h: gallons a minute. */
const GALLONS = (0.4 * 3) / 8 / 60;
const perMinute = unitOf('volume', 'US gal').toSi(GALLONS);
const toluene = { density: gramsPerMillilitre(0.87), molarMass: gramsPerMole(92), gas: kelvin(293) };
const litresPerMinute = (flow: number) => flow * 60e3;

export default [
	published('abulencia-flow', 'example 20.2: vapour from an adhesive with toluene', {
		of: ['vapour-volume'],
		unit: 'L/min',
		read,
		within: { absolute: 0.006, because: 'printed to two decimals' },
		rows: [
			{
				where: 'at 20 °C',
				expected: 2.15,
				actual: () => 1000 * vapourVolume.at({ ...toluene, liquid: perMinute as CubicMetre })
			}
		]
	}),
	published('abulencia-flow', 'example 20.2: air to dilute it', {
		of: ['dilution-flow'],
		unit: 'L/min',
		read,
		within: { relative: 0.003, because: 'worked on with 2.15 L/min' },
		rows: [
			{
				where: 'to 80 ppm with a mixing factor of 5',
				expected: 134_375,
				actual: () =>
					litresPerMinute(
						dilutionFlow.at({
							...toluene,
							evaporation: (perMinute / 60) as CubicMetrePerSecond,
							allowed: fraction(80e-6),
							mixing: ratio(5)
						})
					)
			}
		]
	})
];

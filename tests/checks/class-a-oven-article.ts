import { explosionReliefArea } from '../../src/lib/engine/physics/solvent/explosion-relief-area';
import { ovenAir } from '../../src/lib/engine/physics/solvent/oven-air';
import { vapourVolume } from '../../src/lib/engine/physics/solvent/vapour-volume';
import { SOLVENTS } from '../../src/lib/engine/solvents/solvents';
import { fahrenheit, fraction, litres } from '../../src/lib/engine/units/construct';
import type { CubicMetre } from '../../src/lib/engine/units/dimension';
import { unitOf } from '../../src/lib/engine/units/units';
import { published } from './published';

const read = 'article on the edition of 1999';
const { density, molarMass, nfpa } = SOLVENTS.toluene;

/** How many times below its cold limit the mean of a batch is held, by how much air the formula asks for. */
const thinned = (degrees: number, share: number) => () => {
	const liquid = litres(1);
	const vapour = vapourVolume.at({ liquid, density, molarMass, gas: fahrenheit(70) });
	const air = ovenAir.amount.at({
		liquid,
		density,
		molarMass,
		gas: fahrenheit(degrees),
		limit: nfpa.limit,
		share: fraction(share)
	});
	return (nfpa.limit * (vapour + air)) / vapour;
};

export default [
	published('class-a-oven-article', 'relief of an oven of 45 ft³', {
		of: ['explosion-relief-area'],
		unit: 'ft²',
		read,
		within: { relative: 1e-9, because: 'exact as printed' },
		rows: [
			{
				where: '15 to 1',
				expected: 3,
				actual: () =>
					unitOf('area', 'ft²').fromSi(
						explosionReliefArea.at({ oven: unitOf('volume', 'ft³').toSi(45) as CubicMetre })
					)
			}
		]
	}),
	published('class-a-oven-article', 'ratio of the explosive limit to the vapour permitted', {
		of: ['oven-air'],
		unit: ':1',
		read,
		within: { relative: 0.025, because: 'whole numbers; a tenth of seven tenths is one in 14.3' },
		rows: [
			{ where: 'batch oven at 250 °F', expected: 10, actual: thinned(250, 0.1) },
			{ where: 'batch oven at 300 °F', expected: 14, actual: thinned(300, 0.1) },
			{ where: 'continuous oven at 250 °F', expected: 4, actual: thinned(250, 0.25) }
		]
	})
];

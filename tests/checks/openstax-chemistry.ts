import { activationEnergy } from '../../src/lib/engine/physics/cure/activation-energy';
import { cureCredit } from '../../src/lib/engine/physics/cure/cure-credit';
import { cureEquivalence } from '../../src/lib/engine/physics/cure/cure-equivalence';
import { celsius, hours, kelvin, ratio } from '../../src/lib/engine/units/construct';
import type { MolarEnergy } from '../../src/lib/engine/units/dimension';
import { published } from './published';

const energy = (times: number, cooler: number, warmer: number) => () =>
	activationEnergy.at({ times: ratio(times), cooler: kelvin(cooler), warmer: kelvin(warmer) }) / 1e3;

export default [
	published('openstax-chemistry', '§12.5: activation energies from two rates', {
		of: ['activation-energy'],
		unit: 'kJ/mol',
		read: 'exercises and their answers',
		within: { absolute: 0.5, because: 'printed in whole kilojoules' },
		rows: [
			{
				where: 'serum enzyme, 1.47 times faster from 30 to 37 °C',
				expected: 43,
				within: 0.05,
				actual: energy(1.47, 303.15, 310.15)
			},
			{
				where: 'sucrose, 2.1 to 8.5 from 27 to 37 °C',
				expected: 108,
				actual: energy(8.5 / 2.1, 300.15, 310.15)
			},
			{
				where: 'dinitrogen pentoxide, 1.66 to 7.39 from 650 to 700 K',
				expected: 110,
				within: 5,
				actual: energy(7.39 / 1.66, 650, 700)
			}
		]
	}),
	published('openstax-chemistry', '§12.5: rate constant of sucrose at 47 °C', {
		of: ['cure-equivalence'],
		unit: '10⁻¹⁰/s',
		read: 'exercise and its answer',
		within: { absolute: 0.06, because: 'printed to two digits, worked on from rounded numbers' },
		rows: [
			{
				where: 'from 0.85 at 37 °C with 108 kJ/mol',
				expected: 3.2,
				actual: () =>
					(0.85 * hours(1)) /
					cureEquivalence.at({
						stated: hours(1),
						statedAt: celsius(37),
						at: celsius(47),
						activation: 108_000 as MolarEnergy
					})
			}
		]
	}),
	published('openstax-chemistry', '§12.5: an hour at 37 °C counted at 30 °C', {
		of: ['cure-credit'],
		unit: 'h',
		read: 'exercise and its answer',
		within: { absolute: 0.005, because: 'the ratio is printed to two decimals' },
		rows: [
			{
				where: '43.0 kJ/mol, 1.47 times faster',
				expected: 1.47,
				actual: () =>
					cureCredit.at({
						times: [hours(0), hours(0.25), hours(1)],
						temperatures: [37, 37, 37].map(celsius),
						lowest: celsius(25),
						highest: celsius(40),
						reference: celsius(30),
						activation: 43_000 as MolarEnergy
					}).equivalent / hours(1)
			}
		]
	})
];

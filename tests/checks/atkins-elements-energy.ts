import { activationEnergy } from '../../src/lib/engine/physics/cure/activation-energy';
import { cureCredit } from '../../src/lib/engine/physics/cure/cure-credit';
import { celsius, hours, kelvin, ratio } from '../../src/lib/engine/units/construct';
import type { MolarEnergy } from '../../src/lib/engine/units/dimension';
import { published } from './published';

const read = 'illustration of chapter 10 as worked in an open textbook-companion project';

export default [
	published('atkins-elements', 'ch. 10: the energy behind that rise, read backwards', {
		of: ['activation-energy'],
		table: 'ch. 10: how much faster from 298 K to 310 K',
		unit: 'kJ/mol',
		read,
		within: { absolute: 0.2, because: 'the ratio is printed to two decimals' },
		rows: [
			{
				where: '2.18 times faster from 298 K to 310 K',
				expected: 50,
				actual: () =>
					activationEnergy.at({ times: ratio(2.18), cooler: kelvin(298), warmer: kelvin(310) }) / 1e3
			}
		]
	}),
	published('atkins-elements', 'ch. 10: an hour at 310 K counted at 298 K', {
		of: ['cure-credit'],
		table: 'ch. 10: how much faster from 298 K to 310 K',
		unit: 'h',
		read,
		within: { absolute: 0.005, because: 'printed to two decimals' },
		rows: [
			{
				where: '50 kJ/mol',
				expected: 2.18,
				actual: () =>
					cureCredit.at({
						times: [hours(0), hours(1)],
						temperatures: [kelvin(310), kelvin(310)],
						lowest: celsius(20),
						highest: celsius(60),
						reference: kelvin(298),
						activation: 50_000 as MolarEnergy
					}).equivalent / hours(1)
			}
		]
	})
];

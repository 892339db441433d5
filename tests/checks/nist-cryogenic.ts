import type { SubstrateId } from '../../src/lib/engine/substrates/substrates';
import { materialRow } from './material-row';
import { published } from './published';

/** The form of its fits: log₁₀ of the property is a polynomial in log₁₀ of the temperature in kelvin. */
const fit = (coefficients: readonly number[], temperature: number) => {
	const x = Math.log10(temperature);
	return 10 ** coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);
};
const row = (
	where: string,
	id: SubstrateId,
	property: 'heat' | 'conductivity',
	coefficients: readonly number[]
) => materialRow(id, property, Number(fit(coefficients, 300).toPrecision(6)), where);

export default published('nist-cryogenic', 'fits at 300 K', {
	of: ['materials'],
	unit: 'SI',
	read: 'coefficients as held in open-source engineering codes',
	within: {
		relative: 0.07,
		because: 'the fits of specific heat are stated to 5 %, alloys scatter by as much'
	},
	rows: [
		row(
			'6061-T6 aluminium, conductivity',
			'aluminium-6061',
			'conductivity',
			[0.07918, 1.0957, -0.07277, 0.08084, 0.02803, -0.09464, 0.04179, -0.00571]
		),
		row(
			'6061-T6 aluminium, specific heat',
			'aluminium-6061',
			'heat',
			[46.6467, -314.292, 866.662, -1298.3, 1162.27, -637.795, 210.351, -38.3094, 2.96344]
		),
		row(
			'304 stainless, conductivity',
			'stainless-steel',
			'conductivity',
			[-1.4087, 1.3982, 0.2543, -0.626, 0.2334, 0.4256, -0.4658, 0.165, -0.0199]
		),
		row(
			'304 stainless, specific heat',
			'stainless-steel',
			'heat',
			[22.0061, -127.5528, 303.647, -381.0098, 274.0328, -112.9212, 24.7593, -2.239153]
		),
		row(
			'Ti-6Al-4V, conductivity',
			'titanium',
			'conductivity',
			[-5107.8774, 19240.422, -30789.064, 27134.756, -14226.379, 4438.2154, -763.07767, 55.796592]
		),
		row(
			'G-10 CR across the layers, conductivity',
			'glass-laminate',
			'conductivity',
			[-4.1236, 13.788, -26.068, 26.272, -14.663, 4.4954, -0.6905, 0.0397]
		),
		row(
			'G-10 CR, specific heat',
			'glass-laminate',
			'heat',
			[-2.4083, 7.6006, -8.2982, 7.3301, -4.2386, 1.4294, -0.24396, 0.015236]
		)
	]
});

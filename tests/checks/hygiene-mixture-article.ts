import { mixtureExposure } from '../../src/lib/engine/physics/exposure/mixture-exposure';
import type { Fraction } from '../../src/lib/engine/units/dimension';
import { published } from './published';

const ppm = (...values: number[]) => values.map((value) => value / 1e6) as Fraction[];
const both = () => mixtureExposure.share.at({ concentrations: ppm(150, 300), limits: ppm(200, 400) });

export default published('hygiene-mixture-article', 'methanol and ethyl acetate, each below its limit', {
	of: ['mixture-exposure-share'],
	unit: '1',
	read: 'article with its worked example',
	within: { absolute: 0.05, because: 'printed to one decimal' },
	rows: [
		{ where: '150 of 200 and 300 of 400 ppm', expected: 1.5, actual: () => both().sum },
		{ where: 'is over the limit', expected: true, actual: () => both().over }
	]
});

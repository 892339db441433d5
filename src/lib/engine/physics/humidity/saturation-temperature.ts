import { cite } from '../../sources/provenance';
import { celsius, kelvin } from '../../units/construct';
import { defineFormula } from '../formula';
import { vapourPressure } from './vapour-pressure';

const COLDEST = celsius(-100);
const HOTTEST = celsius(200);
/** So many halvings of 300 K leave less than the last digit of a number. */
const HALVINGS = 60;

/** Dew point of air with this water vapour pressure; a frost point where it lies below the triple point. */
export const saturationTemperature = defineFormula({
	id: 'saturation-temperature',
	title: {
		en: 'Dew or frost point of a vapour pressure',
		es: 'Punto de rocío o escarcha de una presión de vapor'
	},
	equation: 'e = p(saturation)(Td), solved for Td by halving',
	source: cite(
		'ashrae-fundamentals-2017',
		'ch. 1, eq. 5 and 6 inverted',
		{ read: 'coefficients in an open-source psychrometrics library' },
		'handbook'
	),
	inputs: { vapour: 'pressure' },
	gives: 'temperature',
	validFor: { vapour: [vapourPressure.at({ dew: COLDEST }), vapourPressure.at({ dew: HOTTEST })] },
	compute({ vapour }) {
		let low: number = COLDEST;
		let high: number = HOTTEST;
		for (let done = 0; done < HALVINGS; done += 1) {
			const middle = (low + high) / 2;
			if (vapourPressure.at({ dew: kelvin(middle) }) < vapour) low = middle;
			else high = middle;
		}
		return high;
	}
});

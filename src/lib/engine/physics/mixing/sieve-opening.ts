import { cite } from '../../sources/provenance';
import { micrometres } from '../../units/construct';
import type { Count, Metre } from '../../units/dimension';
import { defineProcedure } from '../procedure';

const MICROMETRES: Readonly<Record<number, number>> = {
	20: 850,
	30: 600,
	40: 425,
	50: 300,
	60: 250,
	70: 212,
	80: 180,
	100: 150,
	120: 125,
	140: 106,
	170: 90,
	200: 75,
	230: 63,
	270: 53,
	325: 45,
	400: 38,
	450: 32,
	500: 25,
	635: 20
};

const KNOWN = Object.keys(MICROMETRES);

/**
 * Opening of the sieve or strainer cloth of this number of ASTM E11. It is not 25.4 mm over the number, because the
 * wires take their share; so a number outside the standard has no opening here and throws, naming what is known.
 */
export const sieveOpening = defineProcedure<{ readonly number: Count }, Metre>({
	id: 'sieve-opening',
	title: { en: 'Opening of a sieve number', es: 'Abertura de un número de malla' },
	equation: 'table by number',
	source: cite('astm-e11', 'Table 1', { read: 'table as held in an open-source library' }),
	inputs: { number: 'count' },
	validFor: { number: [20, 635] },
	compute({ number }) {
		const opening = MICROMETRES[number];
		if (opening === undefined)
			throw new RangeError(
				`sieve-opening: No. ${number} is not in ASTM E11; allowed are ${KNOWN.join(', ')}`
			);
		return micrometres(opening);
	}
});

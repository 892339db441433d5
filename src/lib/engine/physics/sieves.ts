import { cite } from '../sources/provenance';
import { micrometres } from '../units/construct';
import type { Metre } from '../units/dimension';

export const SIEVE_SOURCE = cite('astm-e11', 'Table 1', { read: 'table as held in an open-source library' });

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

/** Sieve numbers of ASTM E11, coarse to fine. */
export const SIEVES = Object.keys(MICROMETRES).map(Number);

/**
 * Opening of the sieve cloth of this number. It is not 25.4 mm over the number, because the wires take their share; so
 * a number outside the standard has no opening here and throws.
 */
export function sieveOpening(number: number): Metre {
	const opening = MICROMETRES[number];
	if (opening === undefined)
		throw new RangeError(`sieve No. ${number} is not in ASTM E11; known: ${SIEVES.join(', ')}`);
	return micrometres(opening);
}

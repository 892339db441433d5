import { format } from '../format';

const en = {
	all: (names: string[]) => `all of: ${format.list(names, 'en')}`,
	none: (names: string[]) => `none of: ${format.list(names, 'en')}`,
	nothing: 'nothing',
	before: (first: string, then: string) => `${first} before ${then}`,
	low: (by: string) => `${by} too low`,
	high: (by: string) => `${by} too high`,
	lowBy: 'too low',
	highBy: 'too high',
	away: (by: string) => `${by} off`,
	missing: 'something is missing',
	other: 'not what the rule allows'
};

const es = {
	all: (names: string[]) => `todo esto: ${format.list(names, 'es')}`,
	none: (names: string[]) => `nada de esto: ${format.list(names, 'es')}`,
	nothing: 'nada',
	before: (first: string, then: string) => `${first} antes de ${then}`,
	low: (by: string) => `${by} por debajo`,
	high: (by: string) => `${by} por encima`,
	lowBy: 'demasiado bajo',
	highBy: 'demasiado alto',
	away: (by: string) => `${by} de diferencia`,
	missing: 'falta algo',
	other: 'no es lo que permite la regla'
} satisfies typeof en;

export const expectations = { en, es };

import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';

const SPACE = { space: 'volume', flow: 'flow', mixing: 'ratio' } as const;
const SPACE_RANGE: { [K in keyof typeof SPACE]: [number, number] } = {
	space: [0.01, 1e5],
	flow: [1e-5, 100],
	mixing: [1, 10]
};
const SOURCE = cite('mmwr-1994-tb', 'Table S3-1 and its footnote', { read: 'the table page' });

/**
 * Clearing a room, booth or oven with clean air: what is left falls by the same factor with every change of air, 63 % for
 * perfect mixing. K says how many times longer real mixing takes, from 1, never met, to 10 for air that goes past dead
 * corners. Only after the source has stopped: a wet part or an open can goes on giving off vapour. A gas meter says when a
 * space is clear; this only says how long to wait at least.
 */
export const purge = {
	time: defineFormula({
		id: 'purge-time',
		title: { en: 'Time to clear the air', es: 'Tiempo para limpiar el aire' },
		equation: 't = K · V/Q · ln(1/remaining)',
		source: SOURCE,
		inputs: { ...SPACE, remaining: 'fraction' },
		gives: 'duration',
		validFor: { ...SPACE_RANGE, remaining: [1e-6, 1] },
		compute: ({ space, flow, mixing, remaining }) => (-mixing * space * Math.log(remaining)) / flow
	}),
	remaining: defineFormula({
		id: 'purge-remaining',
		title: { en: 'Left in the air after a time', es: 'Lo que queda en el aire tras un tiempo' },
		equation: 'remaining = exp(−Q · t/(K · V))',
		source: SOURCE,
		inputs: { ...SPACE, spent: 'duration' },
		gives: 'fraction',
		validFor: { ...SPACE_RANGE, spent: [0, 86_400] },
		compute: ({ space, flow, mixing, spent }) => Math.exp((-flow * spent) / (mixing * space))
	})
};

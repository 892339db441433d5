import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';

const onBasis = <D extends 'volume' | 'mass'>(basis: D) =>
	defineFormula({
		id: `hardener-for-base-by-${basis}`,
		title: { en: 'Hardener for this base', es: 'Endurecedor para esta base' },
		equation: 'B = A/r',
		source: arithmetic('r parts A to one part B'),
		inputs: { base: basis, ratio: 'ratio' },
		gives: basis,
		// wider than any printed ratio: converting between volume and weight moves it by the ratio of the densities
		validFor: { base: [0, 1000], ratio: [0.005, 2000] },
		compute: ({ base, ratio }) => base / ratio
	});

/** Hardener to a base already poured; volume in m³, mass in kg. The ratio must be on the same basis. */
export const hardenerForBase = { volume: onBasis('volume'), mass: onBasis('mass') };

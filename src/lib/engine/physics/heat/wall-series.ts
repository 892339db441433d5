import { lastWhere } from '../last-where';

/** One term of the series: ζ with ζ·tan ζ = Bi in the quarter turn after so many half turns, and what it weighs. */
export type WallTerm = { readonly root: number; readonly weight: number };

/**
 * Fourier number before which the series is not used: until then the core has moved by less than any instrument shows,
 * and the terms that the skin needs become too many.
 */
export const EARLIEST = 0.005;

/** Share of the first difference below which a term no longer changes the sum. */
const NEGLIGIBLE = 1e-16;

/** Term of a wall at a Biot number above 0, from 0. */
export function wallTerm(biot: number, index: number): WallTerm {
	const before = index * Math.PI;
	// over the quarter turn the left side only grows and the right only falls, so they cross once
	const beyond = lastWhere(
		(angle) => (before + angle) * Math.sin(angle) <= biot * Math.cos(angle),
		0,
		Math.PI / 2
	);
	const root = before + beyond;
	return { root, weight: (4 * Math.sin(root)) / (2 * root + Math.sin(2 * root)) };
}

/**
 * Share of the first difference to the air that is left, by Fourier number and place: 0 at the core, 1 at the face.
 * Terms are worked out as early times call for them.
 */
export function wallDifference(biot: number) {
	const terms: WallTerm[] = [];
	return (fourier: number, place: number): number => {
		let sum = 0;
		for (let index = 0; ; index++) {
			const { root, weight } = (terms[index] ??= wallTerm(biot, index));
			const left = Math.exp(-(root ** 2) * fourier);
			if (left < NEGLIGIBLE) return sum;
			sum += weight * left * Math.cos(root * place);
		}
	};
}

/**
 * Fourier number until which more than `left` (above 0, below 1) of the first difference remains at a place. A face that
 * gets there before the series begins counts as there when it begins.
 */
export function fourierUntil(biot: number, left: number, place: number): number {
	const { root, weight } = wallTerm(biot, 0);
	// no place lags behind the core, and the core is never behind its first term
	const latest = Math.log(weight / left) / root ** 2;
	const difference = wallDifference(biot);
	return lastWhere((at) => at < EARLIEST || difference(at, place) >= left, 0, latest);
}

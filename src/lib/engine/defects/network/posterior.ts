import { chanceOf } from './chance-of';
import type { Evidence, Network } from './network';

/** Chance of each cause, by id, 0 to 1. */
export type Chances = Readonly<Record<string, number>>;

const within = (share: number) => Math.min(1, Math.max(0, share));

/** What is known, with more causes taken as beyond doubt; undefined where that contradicts what is known. */
function taking(evidence: Evidence, ids: readonly string[], so: boolean): Evidence | undefined {
	if (ids.some((id) => evidence.causes?.[id] === !so)) return undefined;
	return { ...evidence, causes: { ...evidence.causes, ...Object.fromEntries(ids.map((id) => [id, so])) } };
}

/** @throws RangeError where what is known cannot be, and as `assertSound` */
function chanceOfKnown(network: Network, evidence: Evidence): number {
	const whole = chanceOf(network, evidence);
	if (!(whole > 0)) throw new RangeError('network: what is known cannot be');
	return whole;
}

/**
 * Chance that at least one of these causes was so, given what is known, 0 to 1.
 * @throws RangeError where what is known cannot be, and as `assertSound`
 */
export function chanceOfAny(network: Network, evidence: Evidence, ids: readonly string[]): number {
	const whole = chanceOfKnown(network, evidence);
	const none = taking(evidence, ids, false);
	return none ? within(1 - chanceOf(network, none) / whole) : 1;
}

/**
 * Chance that each cause was so, given what is known. Exact; each cause for itself, more than one can have been so.
 * @throws RangeError where what is known cannot be, and as `assertSound`
 */
export function posterior(network: Network, evidence: Evidence): Chances {
	const whole = chanceOfKnown(network, evidence);
	return Object.fromEntries(
		network.causes.map(({ id }) => {
			const so = taking(evidence, [id], true);
			return [id, so ? within(chanceOf(network, so) / whole) : 0];
		})
	);
}

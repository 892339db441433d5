import type { Evidence, Network, NetworkTest } from './network';
import { chanceOfAny } from './posterior';

const share = (chance: number) => (chance > 0 ? -chance * Math.log2(chance) : 0);

/** Bits still open in a question of yes or no, 0 to 1. */
const entropy = (chance: number) => share(chance) + share(1 - chance);

/** What one more test is expected to tell about all causes together, in bits: 0 or more, 1 at most. */
export function expectedInformation(network: Network, evidence: Evidence, test: NetworkTest): number {
	const { of, sensitivity, falseAlarm } = test;
	const any = chanceOfAny(network, evidence, of);
	const positive = any * sensitivity + (1 - any) * falseAlarm;
	// the result hangs on the causes only by whether any of them was so: that is all it can tell of their joint state
	const noise = any * entropy(sensitivity) + (1 - any) * entropy(falseAlarm);
	return Math.max(0, entropy(positive) - noise);
}

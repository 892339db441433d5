import type { Evidence, Network } from '$lib/engine';
import { seeded } from '../../../../src/lib/drills/random';

/** A network of 1 to 8 causes and up to 4 tests, with something known of it; the same for the same seed. */
export function randomCase(seed: number): { network: Network; evidence: Evidence } {
	const random = seeded(seed);
	const chance = (low: number, high: number) => random.integer(low * 1e6, high * 1e6) / 1e6;
	const ids = Array.from({ length: (seed % 8) + 1 }, (_, at) => `cause-${at}`);
	const network: Network = {
		causes: ids.map((id) => ({ id, prior: chance(0.02, 0.7), strength: chance(0, 1) })),
		leak: chance(0.01, 0.2),
		tests: Array.from({ length: random.integer(1, 4) }, (_, at) => ({
			id: `test-${at}`,
			of: random.some(ids, Math.min(ids.length, random.integer(0, 3))),
			sensitivity: chance(0.3, 1),
			falseAlarm: chance(0.02, 0.5)
		}))
	};
	const done = random.some(network.tests, random.integer(0, 2));
	const doubtless = random.some(ids, random.onceIn(3) ? 1 : 0);
	const seen = random.integer(0, 5);
	return {
		network,
		evidence: {
			...(seen ? { defect: seen > 1 } : {}),
			results: Object.fromEntries(done.map(({ id }) => [id, random.onceIn(2)])),
			causes: Object.fromEntries(doubtless.map((id) => [id, random.onceIn(2)]))
		}
	};
}

import { expectedInformation } from './expected-information';
import type { Evidence, Network } from './network';

/** A test that was not done yet, with what it is expected to tell. */
export type OpenTest = { readonly id: string; readonly bits: number };

/** Tests without a result so far, the one that is expected to tell most first; equal ones as they stand. */
export const openTests = (network: Network, evidence: Evidence): readonly OpenTest[] =>
	network.tests
		.filter(({ id }) => evidence.results?.[id] === undefined)
		.map((test) => ({ id: test.id, bits: expectedInformation(network, evidence, test) }))
		.toSorted((one, other) => other.bits - one.bits);

/** The test to do next: the one expected to tell most. Undefined where all are done. */
export const bestTest = (network: Network, evidence: Evidence): OpenTest | undefined =>
	openTests(network, evidence)[0];

import type { ProvenanceView } from './provenance-view';

/** One number of a derivation and the numbers it was made from; every text in the reader's language. */
export type DerivationView = {
	readonly label: string;
	/** With its unit, as a gauge would show it. */
	readonly value: string;
	readonly formula?: string;
	readonly provenance?: ProvenanceView;
	readonly from?: readonly DerivationView[];
};

import type { DerivationView } from '../derivation-view';

/** A defective panel with what is known of how it was made, as plain data; every text in the reader's language. */
export type CaseFileView<View extends string = string> = {
	readonly kind: 'case-file';
	/** Ways of looking at the panel, in the order shown. */
	readonly panel: readonly { readonly view: View; readonly src: string; readonly shows: string }[];
	/** What can have led to the defect, in working order. */
	readonly lines: readonly {
		readonly rule: string;
		readonly title: string;
		readonly says: 'broken' | 'kept' | 'nothing';
		readonly saysWord: string;
		/** Empty where nothing was written. */
		readonly written: string;
		readonly right: string;
		/** Whether these two are numbers. */
		readonly onGauge: boolean;
		readonly testEnds: string;
	}[];
	/** The one test that was done, where there is one. */
	readonly result?: { readonly test: string; readonly cameOut: string };
	/** What the teaching model takes for granted. */
	readonly rates: readonly DerivationView[];
};

import type { Degree, DefectId, MeasureId } from '$lib/engine';
import type { DerivationView } from './derivation-view';

type RuleLine = {
	readonly rule: string;
	readonly title: string;
	/** What breaking it leads to. */
	readonly outcome: string;
	/** Address of the section that teaches it. */
	readonly lesson: string;
};

/** What would come out of the oven, as plain data; every text in the reader's language. */
export type OutcomeView = {
	/** Broken safety rules, with the way each reaches people. */
	readonly stops: readonly (RuleLine & { readonly harm: string })[];
	/** Worst first. */
	readonly defects: readonly {
		readonly defect: DefectId;
		readonly severity: Degree;
		readonly name: string;
		readonly severityWord: string;
		readonly from: readonly (RuleLine & { readonly way: string })[];
	}[];
	readonly measures: readonly {
		readonly id: MeasureId;
		readonly degree: 0 | Degree;
		readonly name: string;
		readonly stands: string;
		/** With its unit as on a gauge, or why there is no number. */
		readonly found: string;
		readonly onGauge: boolean;
		readonly wanted: string;
		readonly derivations: readonly DerivationView[];
	}[];
	/** Names of the fields that were left empty. */
	readonly unset: readonly string[];
};

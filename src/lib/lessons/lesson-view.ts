import type { Lang, terms } from '$lib/i18n';
import type { PictureView, Row, TicketView } from '$lib/paper';
import type { DerivationView, FieldView, FindingView, ProvenanceView } from '$lib/ui';

/** What a rule expects on one example job of this shop, in words and in the reader's units. */
export type LimitLine = {
	/** Id of the example job. */
	readonly example: string;
	/** "20 steel hinge plates" */
	readonly name: string;
	readonly sheet: { readonly title: string; readonly lang: Lang };
	readonly value: string;
};

/** A rule as a lesson shows it. */
export type RuleView = {
	readonly id: string;
	readonly title: string;
	readonly href: string;
	readonly severity: keyof (typeof terms)['en']['severity'];
	/** What the set-up sheet asks. */
	readonly asks: string;
	/** One per different expectation, none where no sheet of the shop calls for the rule. */
	readonly lines: readonly LimitLine[];
	/** By id, the example jobs a lesson names; one that does not call for the rule here is missing. */
	readonly on: Readonly<Record<string, LimitLine>>;
	/** How the number of the first line came about, where it is a number. */
	readonly derivation?: DerivationView;
	readonly provenance: ProvenanceView;
};

export type CheckOutcome = 'open' | 'right' | 'wrong' | 'unread' | 'empty';

/** A check in a lesson as it stands for this reader. */
export type CheckView = {
	readonly id: string;
	readonly rule: { readonly title: string; readonly href: string };
	/** The question in words; the field's own label where the set-up sheet asks. */
	readonly question: string;
	/** The example job it asks about, where the engine grades it. */
	readonly job?: {
		readonly name: string;
		readonly ticket: TicketView;
		readonly sheet: { readonly title: string; readonly lang: Lang; readonly rows: readonly Row[] };
	};
	/** Null where no sheet of the shop calls for the rule: then it is not asked. */
	readonly field: FieldView | null;
	readonly outcome: CheckOutcome;
	readonly findings: readonly FindingView[];
	/** Why the answer is right or not, for a check of reasons. */
	readonly because?: string;
	/** Answered right before in this go at the lesson. */
	readonly settled: boolean;
	/** With this answer every check was right: whether the record took the lesson. */
	readonly lesson?: 'recorded' | 'refused';
};

/** A defect of the catalogue as a lesson shows it. */
export type DefectView = {
	readonly name: string;
	readonly look: string;
	readonly lookAlike: string;
	readonly now: string;
	readonly plain: PictureView;
	/** The view in which it differs from what it is taken for. */
	readonly telling: PictureView;
	/** The rules that lead to it when broken. */
	readonly rules: readonly { readonly title: string; readonly href: string }[];
	readonly provenance: ProvenanceView;
};

/** A value of the shop as it holds today. */
export type ValueRow = {
	readonly id: string;
	readonly label: string;
	readonly value: string;
	readonly provenance: ProvenanceView;
};

/** A number of a sum; without provenance it was invented for it. */
export type SumRow = { readonly label: string; readonly value: string; readonly provenance?: ProvenanceView };

/** One line of working in a sum. */
export type SumStep = {
	/** What comes in here for the first time. */
	readonly given: readonly SumRow[];
	/** Whether the step also leans on what stands above it. */
	readonly asAbove: boolean;
	/** Where the formula comes in for the first time. */
	readonly equation?: string;
	readonly result: SumRow;
};

/** A calculation worked out in a lesson, in the reader's language and units. */
export type SumView = {
	readonly id: string;
	readonly asks: string;
	readonly steps: readonly SumStep[];
	/** Within which limits the formulas take each number. */
	readonly holds: readonly { readonly label: string; readonly window: string }[];
	/** What follows at the bench. */
	readonly so?: string;
};

/** Everything the blocks of one lesson need, as plain data. */
export type LessonView = {
	readonly lang: Lang;
	readonly rules: Readonly<Record<string, RuleView>>;
	readonly checks: Readonly<Record<string, CheckView>>;
	readonly sums: Readonly<Record<string, SumView>>;
	/** Lists of shop values by what their ids begin with. */
	readonly values: Readonly<Record<string, readonly ValueRow[]>>;
	/** The catalogue, in the lesson that teaches it; empty in the others. */
	readonly defects: Readonly<Record<string, DefectView>>;
};

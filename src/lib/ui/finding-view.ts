import type { terms } from '$lib/i18n';
import type { DerivationView } from './derivation-view';

/** What the rules say of one answer; every text in the reader's language. */
export type FindingView = {
	readonly id: string;
	/** Name of the field it is about. */
	readonly label: string;
	readonly zone: keyof (typeof terms)['en']['zone'];
	readonly severity: keyof (typeof terms)['en']['severity'];
	/** As it was typed or chosen; empty if nothing was. */
	readonly received: string;
	readonly expected: string;
	readonly howFar?: string;
	readonly rule: { readonly title: string; readonly href?: string };
	readonly why: string;
	/** What would happen to the part or the person. */
	readonly outcome?: string;
	readonly derivation?: DerivationView;
};

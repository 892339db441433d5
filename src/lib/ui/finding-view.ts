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
	/** The next thing to do about it. */
	readonly next?: string;
	/** Where the line of the lesson is. */
	readonly lesson?: string;
	/** What would come out of the oven, drawn: name of the defect, address, and the picture in words. */
	readonly picture?: { readonly name: string; readonly src: string; readonly shows: string };
	readonly derivation?: DerivationView;
};

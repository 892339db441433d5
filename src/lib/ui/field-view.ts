import type { FindingView } from './finding-view';

export type OptionView = { readonly id: string; readonly label: string };

type Asked = {
	/** Unique on the page; an error summary links to it. */
	readonly id: string;
	/** Name under which the form posts it. */
	readonly name: string;
	readonly label: string;
	readonly hint?: string;
	readonly error?: string;
	readonly finding?: FindingView;
};

/**
 * One entry of a set-up sheet as plain data in the reader's language, so that a server load can hand it over and no
 * engine code reaches the browser. `value` is what was typed or chosen, valid or not.
 */
export type FieldView = Asked &
	(
		| { readonly kind: 'quantity'; readonly value: string; readonly units?: readonly string[] }
		| { readonly kind: 'choice'; readonly value: string; readonly options: readonly OptionView[] }
		| { readonly kind: 'choices'; readonly value: readonly string[]; readonly options: readonly OptionView[] }
		/** `value` holds every option's id once, in the order chosen so far. */
		| { readonly kind: 'order'; readonly value: readonly string[]; readonly options: readonly OptionView[] }
	);

/** The view of one kind of field. */
export type FieldOf<Kind extends FieldView['kind']> = Extract<FieldView, { readonly kind: Kind }>;

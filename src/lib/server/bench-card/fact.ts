import type { Dimension, Text } from '$lib/engine';
import { benchCard, ticket } from '$lib/i18n';

type TicketWords = (typeof ticket)['en'];
type Words = {
	[Word in keyof TicketWords]: TicketWords[Word] extends string ? Word : never;
}[keyof TicketWords];
type Hints = keyof (typeof benchCard)['en']['hint'];
type Options = Readonly<Record<string, Text>>;

type Asked = { readonly label: Text; readonly hint?: Text };

/** What an entry that was left empty stands for; `absent` leaves the fact out, so that no rule speaks of it. */
export type IfEmpty = null | 0 | 'absent';

/** One fact of a job as the form asks for it. Its name is its path in the job. */
export type Fact = Asked &
	(
		| { readonly kind: 'text'; readonly longest: number }
		| { readonly kind: 'date'; readonly ifEmpty?: null }
		| {
				readonly kind: 'quantity';
				readonly dimension: Dimension;
				/** An ordinary amount in SI: it settles which units the form names. */
				readonly about: number;
				readonly ifEmpty?: IfEmpty;
		  }
		/** Several amounts in one line; none where it is empty. */
		| {
				readonly kind: 'quantities';
				readonly dimension: Dimension;
				readonly about: number;
				readonly exactly?: number;
		  }
		/** One of the options, which stands for itself or for what it means in a job. */
		| {
				readonly kind: 'choice';
				readonly options: Options;
				readonly means?: Readonly<Record<string, unknown>>;
		  }
		/** Boxes to tick. `absent`: none ticked says nothing, where it otherwise says there is none. */
		| { readonly kind: 'choices'; readonly options: Options; readonly ifNone?: 'absent' }
		/** One of the shop's data sheets in force. */
		| { readonly kind: 'coating' }
	);

export type Facts = Readonly<Record<string, Fact>>;

/** A word of the printed ticket, so that a thing has one name on form, ticket and card. */
export const onTicket = (word: Words): Text => ({
	en: ticket.en[word],
	es: ticket.es[word]
});

export const hinted = (hint: Hints): { hint: Text } => ({
	hint: { en: benchCard.en.hint[hint], es: benchCard.es.hint[hint] }
});

export const quantity = (
	label: Text,
	dimension: Dimension,
	about: number,
	more: { readonly hint?: Text; readonly ifEmpty?: IfEmpty } = {}
): Fact => ({ kind: 'quantity', label, dimension, about, ...more });

export const choice = (
	label: Text,
	options: Options,
	means?: Readonly<Record<string, unknown>>,
	more: { readonly hint?: Text } = {}
): Fact => ({ kind: 'choice', label, options, ...(means ? { means } : {}), ...more });

export const choices = (
	label: Text,
	options: Options,
	hint: Hints,
	more: { readonly ifNone?: 'absent' } = {}
): Fact => ({
	kind: 'choices',
	label,
	options,
	...hinted(hint),
	...more
});

/** A question with two answers. */
export const either = (label: Text, yes: Words = 'yes', no: Words = 'no'): Fact =>
	choice(label, { yes: onTicket(yes), no: onTicket(no) }, { yes: true, no: false });

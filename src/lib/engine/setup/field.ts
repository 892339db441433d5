import type { Competency, Station } from '../station';
import type { Text } from '../text';
import type { Dimension } from '../units/dimension';

export type Options = Readonly<Record<string, Text>>;

/** One line of the set-up sheet. */
export type Field = {
	readonly station: Station;
	readonly competency: Competency;
	/** What the person is asked, as a short question or instruction. */
	readonly label: Text;
} & (
	| { readonly kind: 'quantity'; readonly dimension: Dimension }
	/** Exactly one of the options. */
	| { readonly kind: 'choice'; readonly options: Options }
	/** Any number of the options. */
	| { readonly kind: 'choices'; readonly options: Options }
	/** All options, put in order. */
	| { readonly kind: 'order'; readonly options: Options }
);

type Place = { readonly station: Station; readonly competency: Competency };

/** Makers of fields for one station; the kind stays in the type. */
export const fieldsOf = (place: Place) => ({
	quantity: <const D extends Dimension>(dimension: D, en: string, es: string) =>
		({ ...place, kind: 'quantity', dimension, label: { en, es } }) as const,
	choice: <const O extends Options>(options: O, en: string, es: string) =>
		({ ...place, kind: 'choice', options, label: { en, es } }) as const,
	choices: <const O extends Options>(options: O, en: string, es: string) =>
		({ ...place, kind: 'choices', options, label: { en, es } }) as const,
	order: <const O extends Options>(options: O, en: string, es: string) =>
		({ ...place, kind: 'order', options, label: { en, es } }) as const
});

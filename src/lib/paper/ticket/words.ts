import { format as formatQuantity, type Dimension, type Text } from '$lib/engine';
import { format, say, ticket } from '$lib/i18n';
import { quantityText } from '../quantity-text';
import type { Reader } from '../reader';

export type Row = {
	readonly label: string;
	readonly value: string;
	readonly wide?: boolean;
	/** Hangs on the wall of the shop, and is no fact of this job. */
	readonly chart?: boolean;
};

/** What every part of a ticket is written with. */
export function wordsFor(reader: Reader) {
	const { lang } = reader;
	const words = ticket[lang];
	return {
		words,
		row: (label: string, value: string): Row => ({ label, value }),
		wide: (label: string, value: string): Row => ({ label, value, wide: true }),
		date: (day: string) => format.date(day, lang),
		quantity: (value: number, dimension: Dimension) => quantityText(value, dimension, reader),
		/** As it stands on a plate, whatever units the reader is used to: rounding it in other units could pass a limit. */
		engraved: (value: number, dimension: Dimension, unit: string) =>
			formatQuantity(value, dimension, unit, lang),
		name: <T extends Record<string, Text>>(table: T, id: keyof T & string) => say(table[id]!, lang),
		names: <T extends Record<string, Text>>(table: T, ids: readonly (keyof T & string)[]) =>
			ids.length
				? format.list(
						ids.map((id) => say(table[id]!, lang)),
						lang
					)
				: words.none
	};
}

export type TicketWords = ReturnType<typeof wordsFor>;

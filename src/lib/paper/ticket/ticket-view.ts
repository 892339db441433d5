import { FILM_BASES, type Job, type Shop } from '$lib/engine';
import { windowText } from '../quantity-text';
import type { Reader } from '../reader';
import { benchRows, shelfRows, wearerRows, weatherRows } from './day-rows';
import { partRows } from './part-rows';
import { wordsFor, type Row } from './words';

export type TicketView = {
	readonly number: string;
	readonly head: readonly Row[];
	readonly sections: readonly { readonly title: string; readonly rows: readonly Row[] }[];
};

/** A job ticket in words: everything on it, nothing about what is right. The shop has a data sheet for its coating. */
export function ticketView(job: Job, shop: Shop, reader: Reader): TicketView {
	const sheet = shop.sheets[job.coating];
	if (!sheet) throw new RangeError(`ticket: the shop has no data sheet ${job.coating}`);
	const pen = wordsFor(reader);
	const { words, row, wide, date, quantity, name } = pen;
	const film = job.film
		? `${windowText(job.film, 'length', reader)}, ${name(FILM_BASES, job.film.basis)}`
		: words.filmFromSheet;
	return {
		number: job.ticket,
		head: [
			row(words.customer, job.customer),
			row(words.date, date(job.on)),
			wide(words.coating, sheet.title),
			row(words.film, film),
			row(words.writtenCap, job.writtenCap === null ? words.none : quantity(job.writtenCap, 'temperature')),
			row(words.blastingAgreed, job.blastingAgreed ? words.yes : words.no)
		],
		sections: [
			...job.parts.map((part) => ({
				title: `${words.parts}: ${name({ it: part.name }, 'it')}`,
				rows: partRows(part, pen)
			})),
			{ title: words.weather, rows: weatherRows(job, pen) },
			{ title: words.shelf, rows: shelfRows(job, pen) },
			{ title: words.equipment, rows: benchRows(job, shop, pen) },
			{ title: words.person, rows: wearerRows(job, pen) }
		]
	};
}

import { FILM_BASES, type DataSheet, type Job } from '$lib/engine';
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

/** A job ticket in words: everything on it, nothing about what is right. */
export function ticketView(job: Job, sheet: DataSheet, reader: Reader): TicketView {
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
			{ title: words.equipment, rows: benchRows(job, pen) },
			{ title: words.person, rows: wearerRows(job, pen) }
		]
	};
}

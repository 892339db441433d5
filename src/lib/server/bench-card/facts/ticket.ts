import { FILM_BASES } from '$lib/engine';
import { benchCard } from '$lib/i18n';
import { choice, either, hinted, onTicket, quantity, type Fact, type Facts } from '../fact';

const LONGEST_LINE = 60;
const { label: en } = benchCard.en;
const { label: es } = benchCard.es;

const film = (name: 'filmMin' | 'filmMax'): Fact =>
	quantity({ en: en[name], es: es[name] }, 'length', 25e-6, { ifEmpty: null, ...hinted('film') });

/** Stands where the drawing asks for no film of its own. */
export const AS_THE_SHEET = 'sheet';

/** What the customer's paper says. */
export const ticketFacts: Facts = {
	ticket: { kind: 'text', label: { en: en.ticketNumber, es: es.ticketNumber }, longest: LONGEST_LINE },
	customer: { kind: 'text', label: onTicket('customer'), longest: LONGEST_LINE },
	coating: { kind: 'coating', label: onTicket('coating') },
	'film.basis': choice(onTicket('film'), { [AS_THE_SHEET]: onTicket('filmFromSheet'), ...FILM_BASES }),
	'film.min': film('filmMin'),
	'film.max': film('filmMax'),
	writtenCap: quantity(onTicket('writtenCap'), 'temperature', 400, {
		ifEmpty: null,
		...hinted('writtenCap')
	}),
	blastingAgreed: either(onTicket('blastingAgreed'))
};

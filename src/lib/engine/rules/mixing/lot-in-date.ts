import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'lot-in-date',
	station: 'mixing',
	competency: 'mixing',
	skill: 'C8',
	title: { en: 'A lot past its date is rejected', es: 'Un lote vencido se rechaza' },
	why: {
		en: 'Old coating and old hardener react less than they should. They look fine in the can and give a film that stays soft.',
		es: 'El recubrimiento y el endurecedor viejos reaccionan menos de lo debido. En la lata se ven bien y dan una película que queda blanda.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: commonPractice,
	lesson: 'lot-and-can#lot-in-date',
	breaks: { wrong: ['soft-film', 'gel-bits'] },
	outcome: {
		en: 'A soft film or bits of gel, found by the customer weeks later.',
		es: 'Una película blanda o grumos de gel, que el cliente descubre semanas después.'
	},
	evidence: {
		en: 'Read the dates on the can and on the hardener against the day on the ticket.',
		es: 'Compare las fechas de la lata y del endurecedor con el día de la orden.'
	},
	field: 'lot-action',
	// the printed day itself is still in date
	applies: ({ job: { on, shelf }, sheet }) =>
		shelf.expires < on || (sheet.parts === 2 && shelf.hardenerExpires !== null && shelf.hardenerExpires < on),
	expects: () => ({ kind: 'one-of', options: ['reject'] })
} satisfies Rule;

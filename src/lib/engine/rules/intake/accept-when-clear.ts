import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';
import { raisedTopics } from './questions';

export default {
	id: 'accept-when-clear',
	station: 'intake',
	competency: 'intake',
	skill: 'C4',
	title: { en: 'A job with nothing to ask is started', es: 'Un trabajo sin nada que preguntar se empieza' },
	why: {
		en: 'When the material is known, the cure fits the part and the drawing is clear, asking again only costs the customer a day.',
		es: 'Cuando el material se conoce, el curado cabe en la pieza y el plano es claro, preguntar otra vez solo le cuesta un día al cliente.'
	},
	severity: 'cost',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'ticket-and-sheet#accept-when-clear',
	breaks: {},
	outcome: { en: 'The job stands still for nothing.', es: 'El trabajo queda parado sin motivo.' },
	evidence: {
		en: 'Compare the question sent with what the ticket already says.',
		es: 'Compare la pregunta enviada con lo que ya dice la orden.'
	},
	field: 'decision',
	applies: (seen) => raisedTopics(seen).length === 0,
	expects: () => ({ kind: 'one-of', options: ['accept'] })
} satisfies Rule;

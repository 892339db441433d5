import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';
import { namedTopics, raisedTopics } from './questions';

export default {
	id: 'question-named',
	station: 'intake',
	competency: 'intake',
	skill: 'C4',
	title: { en: 'Everything to be asked is named', es: 'Se nombra todo lo que hay que preguntar' },
	why: {
		en: 'A question left out comes up when the parts are already in work. A question with no ground on the ticket teaches the customer not to answer.',
		es: 'Una pregunta que falta aparece cuando las piezas ya están en proceso. Una pregunta sin base en la orden le enseña al cliente a no contestar.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'ticket-and-sheet#question-named',
	breaks: { low: ['distorted-part', 'flaking', 'over-thick'] },
	outcome: {
		en: 'One problem is put right and the next one is found in the oven.',
		es: 'Se corrige un problema y el siguiente aparece en el horno.'
	},
	evidence: {
		en: 'Compare the note to the customer with every line of the ticket.',
		es: 'Compare el mensaje al cliente con cada línea de la orden.'
	},
	field: 'ask-about',
	applies: () => true,
	expects(seen) {
		return namedTopics(raisedTopics(seen));
	}
} satisfies Rule;

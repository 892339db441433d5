import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';
import { askOr } from './dangers';

export default {
	id: 'film-basis-stated',
	station: 'intake',
	competency: 'intake',
	skill: 'C4',
	title: { en: 'Per side or in total is asked', es: 'Por cara o en total se pregunta' },
	why: {
		en: 'A drawing that gives a film without saying per side or in total can be read two ways, and one is twice the other.',
		es: 'Un plano que da un espesor sin decir por cara o en total se lee de dos maneras; una es el doble de la otra.'
	},
	severity: 'quality',
	authority: 'customer',
	provenance: commonPractice,
	lesson: 'ticket-and-sheet#film-basis-stated',
	breaks: { wrong: ['over-thick', 'pinpoint-rust'] },
	outcome: {
		en: 'The film is half or twice what the fit was made for.',
		es: 'La película queda en la mitad o el doble de lo que pide el ajuste.'
	},
	evidence: {
		en: 'Read the film note on the drawing again and measure the mating part.',
		es: 'Lea otra vez lo que dice el plano sobre la película y mida la pieza que encaja.'
	},
	field: 'decision',
	applies: ({ job }) => job.film?.basis === 'unstated',
	expects: (seen) => ({ kind: 'one-of', options: askOr(seen) })
} satisfies Rule;

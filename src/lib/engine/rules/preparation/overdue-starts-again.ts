import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';
import { isOverdue } from './blasting';

export default {
	id: 'overdue-starts-again',
	station: 'preparation',
	competency: 'preparation',
	skill: 'C7',
	title: { en: 'Overdue parts start again', es: 'Las piezas vencidas empiezan de nuevo' },
	why: {
		en: 'After too long a wait there is oxide and fallen-out oil in the bottom of the profile. A wipe reaches the peaks only.',
		es: 'Tras demasiada espera hay óxido y aceite caído en el fondo del perfil. Un paño solo llega a los picos.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'clock-to-coat#overdue-starts-again',
	breaks: { wrong: ['flash-rust', 'flaking'] },
	outcome: {
		en: 'The film sits on rust and dust and flakes.',
		es: 'La película queda sobre óxido y polvo, y se desprende.'
	},
	evidence: {
		en: 'Compare the time of blasting with the time of coating; look under a chip for rust or dull oxide.',
		es: 'Compare la hora de granallado con la de recubrir; busque óxido bajo una escama.'
	},
	field: 'overdue-action',
	applies: isOverdue,
	expects: () => ({ kind: 'one-of', options: ['restart'] })
} satisfies Rule;

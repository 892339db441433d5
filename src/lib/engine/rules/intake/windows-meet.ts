import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

/** Used by `solve` itself when limits on one field do not meet; no job calls for it beforehand. */
export default {
	id: 'windows-meet',
	station: 'intake',
	competency: 'intake',
	skill: 'C4',
	title: {
		en: 'Limits that cannot both be met are asked',
		es: 'Límites que no se pueden cumplir a la vez se preguntan'
	},
	why: {
		en: 'When two limits leave no value between them, whatever you set breaks one. Only the customer or the lead can say which may give.',
		es: 'Si dos límites no dejan ningún valor en común, lo que usted ponga incumple uno. Solo el cliente o el responsable puede decir cuál cede.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'ticket-and-sheet#windows-meet',
	breaks: { wrong: ['soft-film', 'distorted-part', 'over-thick'] },
	outcome: {
		en: 'One of the two limits is broken without anybody having agreed to it.',
		es: 'Se incumple uno de los dos límites sin que nadie lo haya aceptado.'
	},
	evidence: {
		en: 'Lay the drawing beside the data sheet and compare both limits.',
		es: 'Ponga el plano junto a la hoja técnica y compare los dos límites.'
	},
	field: 'decision',
	applies: () => false,
	expects: () => ({ kind: 'one-of', options: ['ask'] })
} satisfies Rule;

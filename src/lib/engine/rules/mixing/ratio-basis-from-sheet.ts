import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'ratio-basis-from-sheet',
	station: 'mixing',
	competency: 'mixing',
	skill: 'C8',
	title: { en: 'The ratio’s basis comes from the sheet', es: 'La base de la relación viene de la hoja' },
	why: {
		en: 'Base and hardener differ in density, so the same ratio by volume and by weight gives different amounts.',
		es: 'La base y el endurecedor tienen densidades distintas; la misma relación por volumen y por peso da cantidades diferentes.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: commonPractice,
	lesson: 'measuring#ratio-basis-from-sheet',
	breaks: { wrong: ['soft-film', 'over-cure'] },
	outcome: {
		en: 'Too much or too little hardener in every batch: brittle or soft film.',
		es: 'Demasiado o muy poco endurecedor en cada mezcla: película quebradiza o blanda.'
	},
	evidence: {
		en: 'Read the line with the mix ratio on the data sheet and the scale log.',
		es: 'Lea la línea de la relación de mezcla en la hoja técnica y el registro de la balanza.'
	},
	field: 'mix-basis',
	applies: ({ sheet }) => sheet.basis !== null,
	expects: ({ sheet }) => ({ kind: 'one-of', options: [sheet.basis!] })
} satisfies Rule;

import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

const STEPS = ['degrease', 'water-break', 'mask', 'blast', 'blow-off', 'coat'] as const;

export default {
	id: 'preparation-order',
	station: 'preparation',
	competency: 'preparation',
	skill: 'C5',
	title: {
		en: 'Clean, check, mask, blast, blow off, coat',
		es: 'Limpiar, comprobar, enmascarar, granallar, sopletear, recubrir'
	},
	why: {
		en: 'Blasting drives oil that was not removed into the surface, where no wipe reaches it. A mask put on after blasting leaves glue and prints on the key.',
		es: 'El granallado mete en la superficie el aceite que no se quitó, donde ningún paño llega. Una máscara puesta después deja pegamento y huellas sobre el anclaje.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'degreasing#preparation-order',
	breaks: { wrong: ['flaking', 'fisheyes', 'grit-inclusion', 'mask-bleed'] },
	outcome: {
		en: 'Oil under the film: pits, and chips that lift clean.',
		es: 'Aceite bajo la película: cráteres, y escamas que se levantan limpias.'
	},
	evidence: {
		en: 'Compare the times on the traveler, and look under a chip: clean metal means the surface.',
		es: 'Compare las horas en la hoja de ruta, y mire bajo una escama: metal limpio indica la superficie.'
	},
	field: 'preparation-order',
	applies: () => true,
	expects: () => ({ kind: 'order', before: STEPS.slice(1).map((step, index) => [STEPS[index]!, step]) })
} satisfies Rule;

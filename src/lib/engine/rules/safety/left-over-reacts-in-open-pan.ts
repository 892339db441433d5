import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'left-over-reacts-in-open-pan',
	station: 'mixing',
	competency: 'safety',
	skill: 'C14',
	title: {
		en: 'Left-over two-part mix reacts in an open pan first',
		es: 'El sobrante de dos partes reacciona primero en charola abierta'
	},
	why: {
		en: 'Mixed coating keeps heating itself and gives off gas. Under a lid it builds pressure; spread thin under exhaust it reacts out and cools, and only then is it closed waste.',
		es: 'La mezcla se sigue calentando y suelta gas. Con tapa junta presión; extendida bajo extracción reacciona y enfría, y solo entonces es residuo cerrado.'
	},
	severity: 'safety-stop',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'fire-and-booth#left-over-reacts-in-open-pan',
	breaks: {},
	outcome: {
		en: 'A closed can smokes, swells, bursts or starts a fire.',
		es: 'Una lata cerrada humea, se hincha, revienta o inicia un incendio.'
	},
	evidence: {
		en: 'Look in the waste for closed cans that are warm or bulged.',
		es: 'Busque en los residuos latas cerradas tibias o hinchadas.'
	},
	field: 'left-over-waste',
	applies: ({ sheet }) => sheet.parts === 2,
	expects: () => ({ kind: 'one-of', options: ['open-pan'] })
} satisfies Rule;

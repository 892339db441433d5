import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'hardener-sound',
	station: 'mixing',
	competency: 'mixing',
	skill: 'C8',
	title: {
		en: 'Hardener that has met moisture is rejected',
		es: 'Un endurecedor que tomó humedad se rechaza'
	},
	why: {
		en: 'Crystals on the lid or a bulged can mean that water got in. It has used up hardener and made gas.',
		es: 'Los cristales en la tapa o una lata abombada indican que entró agua. Esta consumió endurecedor y formó gas.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'lot-and-can#hardener-sound',
	breaks: { wrong: ['soft-film', 'pinholes'] },
	outcome: {
		en: 'A weak cure and bubbles; the can may spray when it is opened.',
		es: 'Un curado débil y burbujas; la lata puede salpicar al abrirla.'
	},
	evidence: {
		en: 'Look at lid and bottom of the hardener can and at the liquid in a clear cup.',
		es: 'Mire la tapa y el fondo de la lata del endurecedor, y el líquido en un vaso transparente.'
	},
	field: 'lot-action',
	applies: ({ job, sheet }) => sheet.parts === 2 && job.shelf.hardenerState === 'crystals',
	expects: () => ({ kind: 'one-of', options: ['reject'] })
} satisfies Rule;

import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'clean-handling-gloves',
	station: 'preparation',
	competency: 'preparation',
	skill: 'C5',
	title: {
		en: 'Clean parts are touched with powder-free nitrile',
		es: 'Las piezas limpias se tocan con nitrilo sin polvo'
	},
	why: {
		en: 'Skin leaves oil and salt, powder leaves a release film, leather carries old grease. None of it shows before the oven.',
		es: 'La piel deja aceite y sal, el polvo una película que no pega, el cuero grasa vieja. Nada se ve antes del horno.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'handling#clean-handling-gloves',
	breaks: { wrong: ['fingerprint', 'flaking', 'fisheyes', 'flash-rust'] },
	outcome: {
		en: 'Ridges of a print, or dull ovals of glove powder, appear after the bake.',
		es: 'Tras el horneado aparecen las crestas de una huella o manchas mates del polvo del guante.'
	},
	evidence: {
		en: 'Look at the print with a loupe: ridges are a bare hand, a smooth oval is a powdered glove.',
		es: 'Mire la marca con lupa: crestas son mano desnuda, un óvalo liso es guante con polvo.'
	},
	field: 'handling-gloves',
	applies: () => true,
	expects: () => ({ kind: 'one-of', options: ['powder-free-nitrile'] })
} satisfies Rule;

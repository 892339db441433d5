import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';
import { blastWindow } from './blast-window';
import { toBlast } from './blasting';

export default {
	id: 'blast-pressure',
	station: 'preparation',
	competency: 'preparation',
	skill: 'C7',
	title: { en: 'Pressure by the softest part', es: 'La presión según la pieza más blanda' },
	why: {
		en: 'Too much pressure warps thin parts and drives grain into soft metal; too little leaves shiny patches. With several materials the most delicate one sets the gauge.',
		es: 'Demasiada presión deforma piezas delgadas y clava grano en metal blando; muy poca deja zonas brillantes. Con varios materiales, el más delicado fija el manómetro.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'blast-settings#blast-pressure',
	breaks: { low: ['flaking'], high: ['grit-inclusion', 'pinpoint-rust', 'distorted-part'] },
	outcome: {
		en: 'Low: the film flakes off shiny patches. High: embedded grain, deep profile, warped sheet.',
		es: 'Baja: la película se suelta de zonas brillantes. Alta: grano clavado, perfil profundo, lámina deformada.'
	},
	evidence: {
		en: 'Read the cabinet gauge with the nozzle open, in the unit it is marked in.',
		es: 'Lea el manómetro de la cabina con la boquilla abierta, en la unidad que marca.'
	},
	field: 'blast-pressure',
	applies: toBlast,
	expects: blastWindow
} satisfies Rule;

import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'pressure-at-the-cap',
	station: 'spraying',
	competency: 'spraying',
	skill: 'C9',
	title: { en: 'Read the pressure at the air cap', es: 'Leer la presión en la boquilla de aire' },
	why: {
		en: 'Hose and gun eat most of the pressure on the way. Gauges on wall or handle say what goes in, not what breaks up the paint.',
		es: 'La manguera y la pistola se comen casi toda la presión. Los manómetros de pared o mango dicen lo que entra, no lo que atomiza la pintura.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'gun-set-up#pressure-at-the-cap',
	breaks: { wrong: ['orange-peel', 'dry-spray', 'banding'] },
	outcome: {
		en: 'Far too much or too little air at the cap without anybody knowing.',
		es: 'Demasiado o muy poco aire en la boquilla sin que nadie lo sepa.'
	},
	evidence: {
		en: 'Put on the test cap with the gun set as for the job and read it with the trigger pulled.',
		es: 'Ponga la boquilla de prueba con la pistola ajustada como en el trabajo y lea con el gatillo apretado.'
	},
	field: 'pressure-read-at',
	applies: () => true,
	expects: () => ({ kind: 'one-of', options: ['cap'] })
} satisfies Rule;

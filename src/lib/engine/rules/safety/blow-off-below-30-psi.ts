import { constant } from '../../plan/trace';
import { cite } from '../../sources/provenance';
import { psi } from '../../units/construct';
import type { Rule } from '../rule';

const LAW = cite('osha-1910-242', '(b)', { read: 'text of 1910.242(b): less than 30 psi, dead-ended' });

export default {
	id: 'blow-off-below-30-psi',
	station: 'preparation',
	competency: 'safety',
	skill: 'C7',
	title: { en: 'Blow-off stays below 30 psi', es: 'El sopleteo queda por debajo de 30 psi' },
	why: {
		en: 'Air at line pressure drives grit into eyes and through skin. With the nozzle blocked it must stay below 30 psi, with chip guarding and goggles, and never at a person.',
		es: 'El aire de línea mete abrasivo en los ojos y bajo la piel. Con la boquilla tapada, menos de 30 psi, con protector contra partículas y gafas cerradas, nunca hacia una persona.'
	},
	severity: 'safety-stop',
	authority: 'law',
	provenance: LAW,
	lesson: 'blasting-safely#blow-off-below-30-psi',
	breaks: {},
	outcome: {
		en: 'Grit or air can injure eyes and skin.',
		es: 'Abrasivo o aire pueden herir ojos y piel.'
	},
	evidence: {
		en: 'Block the blow-gun nozzle and read the gauge.',
		es: 'Tape la boquilla de la pistola de soplado y lea el manómetro.'
	},
	field: 'blow-off-pressure',
	applies: () => true,
	expects: () => ({
		kind: 'below',
		max: constant('blow-off-below-30-psi', 'pressure', psi(30), LAW, {
			en: 'Legal limit',
			es: 'Límite legal'
		}),
		amber: 0
	})
} satisfies Rule;

import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'blind-hole-down',
	station: 'preparation',
	competency: 'preparation',
	skill: 'C6',
	title: { en: 'A blind hole hangs opening down', es: 'El agujero ciego cuelga hacia abajo' },
	why: {
		en: 'A hole that faces up is a cup: cleaner pools in it, runs out over the wet film and boils in the oven.',
		es: 'Un agujero hacia arriba es un vaso: el limpiador se junta, escurre sobre la película húmeda y hierve en el horno.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'racking#blind-hole-down',
	breaks: { wrong: ['runs', 'solvent-pop'] },
	outcome: {
		en: 'A run and burst blisters around the hole.',
		es: 'Un escurrido y ampollas reventadas alrededor del agujero.'
	},
	evidence: {
		en: 'Blow the hole out over a white cloth before spraying.',
		es: 'Sople el agujero sobre un paño blanco antes de aplicar.'
	},
	field: 'rack-hole',
	applies: ({ job }) => job.parts.some(({ blindHole }) => blindHole),
	expects: () => ({ kind: 'one-of', options: ['down'] })
} satisfies Rule;

import { shopWindow } from '../../shop/shop';
import { commonPractice } from '../../sources/provenance';
import { minutes } from '../../units/construct';
import type { Rule } from '../rule';
import { needsBakeOut } from './bake-out';

export default {
	id: 'bake-out-time',
	station: 'preparation',
	competency: 'preparation',
	skill: 'C4',
	title: { en: 'Bake-out takes its time', es: 'El desgasificado lleva su tiempo' },
	why: {
		en: 'Gas creeps out of deep pores slowly, and the clock counts from when the part is hot. A few minutes only warm the skin.',
		es: 'El gas sale despacio de los poros profundos, y el reloj cuenta desde que la pieza está caliente. Unos minutos solo calientan la piel.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'bake-out#bake-out-time',
	breaks: { low: ['outgassing-blisters', 'pinholes'], high: ['distorted-part'] },
	outcome: {
		en: 'Short: blisters in the cure. Long: an oven taken up, and an alloy aged for nothing.',
		es: 'Corto: ampollas en el curado. Largo: horno ocupado y aleación envejecida sin motivo.'
	},
	evidence: {
		en: 'Read the oven chart from the moment the part was at temperature.',
		es: 'Lea el registro del horno desde que la pieza llegó a temperatura.'
	},
	field: 'bake-out-time',
	applies: needsBakeOut,
	expects({ shop }) {
		return { kind: 'range', ...shopWindow(shop, 'bake-out.time'), amber: minutes(10) };
	}
} satisfies Rule;

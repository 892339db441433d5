import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';
import { bakeOutTemperature, needsBakeOut } from './bake-out';

export default {
	id: 'bake-out-temperature',
	station: 'preparation',
	competency: 'preparation',
	skill: 'C4',
	title: {
		en: 'Bake-out hotter than the cure, within the part limit',
		es: 'Desgasificado más caliente que el curado, dentro del límite de la pieza'
	},
	why: {
		en: 'Air, oil and cleaner in the pores blow through the film at curing heat. Drive them out first, a little hotter than the cure ever gets, never above the part limit.',
		es: 'Aire, aceite y limpiador de los poros atraviesan la película con el calor del curado. Sáquelos antes, algo más caliente que el curado, nunca más de lo que aguanta la pieza.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: cite(
		'casting-outgassing',
		'bake above the cure before coating; less gas, no guarantee',
		{ read: 'stored pages' },
		'common-practice'
	),
	lesson: 'bake-out#bake-out-temperature',
	breaks: { low: ['outgassing-blisters', 'pinholes'], high: ['distorted-part'] },
	outcome: {
		en: 'Low: blisters over the pores. High: the part loses temper or warps.',
		es: 'Baja: ampollas sobre los poros. Alta: la pieza pierde temple o se deforma.'
	},
	evidence: {
		en: 'Bake a bare part and a sheet witness together: blisters on the part only mean gas from the metal.',
		es: 'Hornee juntas una pieza y un testigo de lámina: ampollas solo en la pieza indican gas del metal.'
	},
	field: 'bake-out-temperature',
	applies: needsBakeOut,
	expects(seen) {
		return { kind: 'range', ...bakeOutTemperature(seen), amber: 0 };
	}
} satisfies Rule;

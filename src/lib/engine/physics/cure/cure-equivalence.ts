import { cite } from '../../sources/provenance';
import { celsius } from '../../units/construct';
import { GAS_CONSTANT } from '../constants';
import { defineFormula } from '../formula';

/**
 * Time at another temperature for the same degree of one reaction: t₂ = t₁·exp(E/R·(1/T₂ − 1/T₁)). It says how sensitive a
 * cure is; it never widens a sheet's cure window, because below its glass transition a film stops curing whatever the time.
 */
export const cureEquivalence = defineFormula({
	id: 'cure-equivalence',
	title: { en: 'Equivalent cure time', es: 'Tiempo de curado equivalente' },
	equation: 't₂ = t₁ · exp(E/R · (1/T₂ − 1/T₁)) (K)',
	source: cite('atkins-elements', 'ch. 10, Arrhenius equation', { read: 'as worked for ch. 10' }, 'handbook'),
	inputs: { stated: 'duration', statedAt: 'temperature', at: 'temperature', activation: 'molar-energy' },
	gives: 'duration',
	validFor: {
		stated: [0, 604_800],
		statedAt: [celsius(0), celsius(400)],
		at: [celsius(0), celsius(400)],
		activation: [20_000, 200_000]
	},
	compute: ({ stated, statedAt, at, activation }) =>
		stated * Math.exp((activation / GAS_CONSTANT) * (1 / at - 1 / statedAt))
});

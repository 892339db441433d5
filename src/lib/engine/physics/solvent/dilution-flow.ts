import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';
import { expansion, GAS_RANGE, SOLVENT, SOLVENT_RANGE } from './vapour-expansion';

/**
 * Clean air that keeps a steadily evaporating solvent at a concentration, K times what perfect mixing would take: K from
 * 1, never met, to 10 for a room whose air goes past the source. For vapour of low toxicity, away from faces; where
 * somebody sprays, the booth's air speed governs and not this.
 */
export const dilutionFlow = defineFormula({
	id: 'dilution-flow',
	title: { en: 'Air to dilute an evaporating solvent', es: 'Aire para diluir un disolvente que se evapora' },
	equation: 'Q = K · q(liquid) · ρ · R · T/(M · p · C)',
	source: cite('abulencia-flow', 'ch. 20, dilution ventilation', {
		read: 'example 20.2 as worked in an open textbook-companion project'
	}),
	inputs: {
		evaporation: 'flow',
		...SOLVENT,
		gas: 'temperature',
		allowed: 'fraction',
		mixing: 'ratio'
	},
	gives: 'flow',
	validFor: {
		evaporation: [0, 1e-3],
		...SOLVENT_RANGE,
		gas: GAS_RANGE,
		allowed: [1e-7, 0.1],
		mixing: [1, 10]
	},
	compute: (room) => (room.mixing * room.evaporation * expansion(room)) / room.allowed
});

import { cite } from '../sources/provenance';
import { celsius } from '../units/construct';
import { defineFormula } from './formula';

/**
 * Rule of thumb: pot life doubles for each 10 °C (18 °F) colder and halves for each 10 °C warmer. It leaves out the heat
 * a large batch makes itself, and it does not hold at oven temperature, so it refuses anything outside a shop's climate.
 */
export const potLifeAt = defineFormula({
	id: 'pot-life-at',
	title: { en: 'Pot life at this temperature', es: 'Vida útil de la mezcla a esta temperatura' },
	equation: 't = t₀ · 2^((T₀ − T)/10 °C)',
	source: cite('ufgs-09-97-10', '§3.7.1', { read: '§3.7.1, which gives the rule per 18 °F' }),
	inputs: { stated: 'duration', statedAt: 'temperature', mix: 'temperature' },
	gives: 'duration',
	validFor: { stated: [60, 604_800], statedAt: [celsius(5), celsius(40)], mix: [celsius(0), celsius(45)] },
	compute: ({ stated, statedAt, mix }) => stated * 2 ** ((statedAt - mix) / 10)
});

import { cite } from '../../sources/provenance';
import { celsius } from '../../units/construct';
import type { Kelvin } from '../../units/dimension';
import { explained } from '../explained';
import { defineFormula } from '../formula';

const WARMEST = celsius(45);
const NO_OVEN =
	'doubling for each 10 °C is a rule for a shop’s climate; in an oven it would ask for twice the activation energy';

const rule = defineFormula({
	id: 'pot-life-at',
	title: { en: 'Pot life at this temperature', es: 'Vida útil de la mezcla a esta temperatura' },
	equation: 't = t₀ · 2^((T₀ − T)/10 °C)',
	source: cite('ufgs-09-97-10', '§3.7.1', { read: '§3.7.1, which gives the rule per 18 °F' }),
	inputs: { stated: 'duration', statedAt: 'temperature', mix: 'temperature' },
	gives: 'duration',
	validFor: { stated: [60, 604_800], statedAt: [celsius(5), celsius(40)], mix: [celsius(0), WARMEST] },
	compute: ({ stated, statedAt, mix }) => stated * 2 ** ((statedAt - mix) / 10)
});

function orSayWhy<T>(mix: Kelvin, work: () => T): T {
	try {
		return work();
	} catch (refusal) {
		throw mix > WARMEST ? explained(refusal, NO_OVEN) : refusal;
	}
}

/**
 * Rule of thumb: pot life doubles for each 10 °C (18 °F) colder and halves for each 10 °C warmer. It leaves out the heat
 * a large batch makes itself, and it does not hold at oven temperature, so it refuses anything outside a shop's climate
 * and says why.
 */
export const potLifeAt: typeof rule = {
	...rule,
	at: (values) => orSayWhy(values.mix, () => rule.at(values)),
	of: (inputs) => orSayWhy(inputs.mix.value, () => rule.of(inputs))
};

import { cite } from '../../sources/provenance';
import type { Text } from '../../text';
import { fahrenheit, fraction, kelvin } from '../../units/construct';
import { defineFormula } from '../formula';
import { hotExplosiveLimit } from './hot-explosive-limit';
import { EXPLOSIVE_LIMIT_RANGE, expansion, SOLVENT, SOLVENT_RANGE } from './vapour-expansion';

/** Fresh air is stated at this temperature; a fan that draws hot gas moves the volume it has there. */
const FRESH = fahrenheit(70);

const air = <D extends 'volume' | 'flow'>(dimension: D, id: string, title: Text, most: number) =>
	defineFormula({
		id,
		title,
		equation: 'air = V(liquid) · ρ · R · 294 K/(M · p) · (1 − LEL(hot))/(share · LEL(hot))',
		source: cite('nfpa-86', '§11.6, safety ventilation of Class A ovens', {
			read: 'shares and hot factor as quoted in trade articles; the equation is that of dilution'
		}),
		inputs: { liquid: dimension, ...SOLVENT, gas: 'temperature', limit: 'fraction', share: 'fraction' },
		gives: dimension,
		validFor: {
			liquid: [0, most],
			...SOLVENT_RANGE,
			gas: hotExplosiveLimit.validFor.gas,
			limit: EXPLOSIVE_LIMIT_RANGE,
			share: [0.01, 0.5]
		},
		compute(values) {
			const { liquid, density, molarMass, gas, limit, share } = values as Record<keyof typeof values, number>;
			const hot = hotExplosiveLimit.at({ limit: fraction(limit), gas: kelvin(gas) });
			return (liquid * expansion({ density, molarMass, gas: FRESH }) * (1 - hot)) / (share * hot);
		}
	});

/**
 * Fresh air at 70 °F (21 °C) that keeps the vapour in a cure oven at a share of its lower explosive limit: a quarter where
 * parts pass through steadily; a tenth, as the average of a batch, because a batch gives off most of its solvent in its
 * first minutes. Per amount of solvent, or per rate for a conveyor oven. It replaces neither the plate of the oven nor the
 * authority that has jurisdiction.
 */
export const ovenAir = {
	amount: air('volume', 'oven-air', { en: 'Fresh air for the oven', es: 'Aire fresco para el horno' }, 1),
	rate: air(
		'flow',
		'oven-air-flow',
		{ en: 'Fresh air flow for the oven', es: 'Caudal de aire fresco para el horno' },
		1e-2
	)
};

import { cite } from '../../sources/provenance';
import { celsius, pascal, squareMetres } from '../../units/construct';
import { chokedAirFlow } from './choked-air-flow';
import { ATMOSPHERE } from '../constants';
import { defineFormula } from '../formula';
import { freeAir } from './free-air';
import { isChoked } from './nozzle-ends';
import { subcriticalAirFlow } from './subcritical-air-flow';

/** Air in the hose, and the free air it is counted as: 20 °C at sea level. */
const TEMPERATURE = celsius(20);
const OUTSIDE = pascal(ATMOSPHERE);

/**
 * Free air (20 °C, 101.325 kPa) that a pressure-fed blast nozzle takes while abrasive runs. `gauge` is read at the
 * nozzle, `bore` is its narrowest place as measured, not as stamped. The grain takes room from the air: trade charts
 * measured with abrasive flowing lie at a `coefficient` of 0.75 to 0.80 for small bores and up to 0.85 for larger ones,
 * so 0.78 is right to about ±20 % over all of them. Suction guns and air alone are other machines.
 */
export const blastNozzleAir = defineFormula({
	id: 'blast-nozzle-air',
	title: { en: 'Free air a blast nozzle takes', es: 'Aire libre que toma una boquilla de granallado' },
	equation: 'Q = ṁ(C, π·d²/4, p + 101.325 kPa, 20 °C) · R·T/p(air)',
	source: cite('blast-nozzle-chart', 'air in cfm by bore and pressure', { read: 'chart' }, 'common-practice'),
	inputs: { bore: 'length', gauge: 'pressure', coefficient: 'fraction' },
	gives: 'flow',
	validFor: { bore: [1e-3, 0.02], gauge: [5e3, 1e6], coefficient: [0.5, 1] },
	compute({ bore, gauge, coefficient }) {
		const upstream = pascal(gauge + ATMOSPHERE);
		const through = isChoked(upstream, OUTSIDE) ? chokedAirFlow : subcriticalAirFlow;
		const flow = through.at({
			area: squareMetres((Math.PI / 4) * bore ** 2),
			coefficient,
			upstream,
			downstream: OUTSIDE,
			temperature: TEMPERATURE
		});
		return freeAir.at({ flow, temperature: TEMPERATURE, pressure: OUTSIDE });
	}
});

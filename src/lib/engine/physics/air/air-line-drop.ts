import { cite } from '../../sources/provenance';
import { PASCAL_PER_PSI } from '../../units/construct';
import { ATMOSPHERE } from '../constants';
import { defineFormula } from '../formula';

const FOOT = 0.3048;
const INCH = 0.0254;
/** Largest drop, as a share of the absolute line pressure, for which one density all along is still a fair picture. */
const SMALL = 0.1;

/**
 * Pressure lost to friction along a hose or pipe of air, by the handbook formula of Harris (psi, ft, ft³/s of free air,
 * inches). `bore` is the inside diameter; couplings and valves count as extra length. It lies about a quarter above the
 * schedule-40 tables of piping handbooks: a careful guess for lines that are no longer new.
 * Throws where the drop is more than a tenth of the absolute line pressure: the air then expands on the way, which the
 * formula leaves out.
 */
export const airLineDrop = defineFormula({
	id: 'air-line-drop',
	title: { en: 'Pressure lost along an air line', es: 'Presión perdida en una línea de aire' },
	equation: 'Δp = 0.1025 · L · Q² / (r · d^5.31), r = p(absolute)/p(air) (psi, ft, ft³/s, in)',
	source: cite(
		'esposito-fluid-power',
		'example 14-1',
		{ read: 'formula as worked in an open textbook-companion project' },
		'handbook'
	),
	inputs: { length: 'length', air: 'flow', gauge: 'pressure', bore: 'length' },
	gives: 'pressure',
	validFor: { length: [0.1, 1000], air: [0, 0.5], gauge: [100e3, 1.5e6], bore: [5e-3, 0.15] },
	compute({ length, air, gauge, bore }) {
		const absolute = gauge + ATMOSPHERE;
		const friction = (length / FOOT) * (air / FOOT ** 3) ** 2;
		const drop = (PASCAL_PER_PSI * 0.1025 * friction) / ((absolute / ATMOSPHERE) * (bore / INCH) ** 5.31);
		if (drop > SMALL * absolute)
			throw new RangeError(
				`air-line-drop: ${drop.toFixed(0)} Pa is too much of ${absolute} Pa; allowed is up to ${SMALL} of it`
			);
		return drop;
	}
});

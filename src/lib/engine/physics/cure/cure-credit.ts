import { cite } from '../../sources/provenance';
import type { Kelvin, MolarEnergy } from '../../units/dimension';
import { GAS_CONSTANT } from '../constants';
import { cureEquivalence } from './cure-equivalence';
import { TEMPERATURE } from '../heat/lumped-body';
import { defineProcedure } from '../procedure';
import { spansInside, type Readings, type Span } from '../readings/reading-spans';

type Inputs = Readings & {
	/** The sheet's window for the part. */
	readonly lowest: Kelvin;
	readonly highest: Kelvin;
	/** Temperature the time is expressed at. */
	readonly reference: Kelvin;
	readonly activation: MolarEnergy;
};
type CureCredit = {
	/** Seconds at the reference temperature that would do the same. */
	readonly equivalent: number;
	/** Seconds inside the window. */
	readonly inside: number;
};

/** Even, as Simpson's rule asks; twice as many change an hour by less than a millisecond. */
const STEPS = 32;

/** Seconds at the reference that a stretch is worth, by Simpson's rule over its straight line. */
function worth({ from, to, first, last }: Span, speed: (temperature: number) => number): number {
	let sum = speed(first) + speed(last);
	for (let step = 1; step < STEPS; step++)
		sum += (step % 2 ? 4 : 2) * speed(first + ((last - first) * step) / STEPS);
	return (sum * (to - from)) / (3 * STEPS);
}

/**
 * What the chart of a part is worth as time at one temperature. Only inside the sheet's window: whatever the equation
 * would say of the ramp below it or of an overshoot above it counts nothing, because below its glass transition a film
 * stops curing and above its window it degrades. It compares charts; the sheet's hold still holds. Throws a RangeError
 * for readings that are not in order, and for a reference outside the window.
 */
export const cureCredit = defineProcedure<Inputs, CureCredit>({
	id: 'cure-credit',
	title: { en: 'Equivalent cure of a chart', es: 'Curado equivalente de un registro' },
	equation: 't₀ = ∫ exp(E/R · (1/T₀ − 1/T)) dt inside the window',
	source: cite(
		'openstax-chemistry',
		'§12.5, Arrhenius equation',
		{ read: 'section and answers' },
		'handbook'
	),
	inputs: {
		times: 'duration',
		temperatures: 'temperature',
		lowest: 'temperature',
		highest: 'temperature',
		reference: 'temperature',
		activation: 'molar-energy'
	},
	validFor: {
		times: [0, 604_800],
		temperatures: TEMPERATURE,
		lowest: cureEquivalence.validFor.at,
		highest: cureEquivalence.validFor.at,
		reference: cureEquivalence.validFor.at,
		activation: cureEquivalence.validFor.activation
	},
	compute({ lowest, highest, reference, activation, ...readings }) {
		if (!(lowest <= reference && reference <= highest))
			throw new RangeError(
				`cure-credit: reference = ${reference} does not lie in the window from ${lowest} to ${highest} (SI)`
			);
		const speed = (temperature: number) =>
			Math.exp((activation / GAS_CONSTANT) * (1 / reference - 1 / temperature));
		const spans = spansInside('cure-credit', readings, lowest, highest);
		return {
			equivalent: spans.reduce((sum, span) => sum + worth(span, speed), 0),
			inside: spans.reduce((sum, { from, to }) => sum + (to - from), 0)
		};
	}
});

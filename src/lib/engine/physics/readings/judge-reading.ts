import { cite } from '../../sources/provenance';
import type { Metre } from '../../units/dimension';
import { guardedLimits } from './guarded-limits';
import { defineProcedure } from '../procedure';

export type ReadingVerdict = {
	/** Proven inside, proven outside, or too near a limit for this gauge. */
	readonly zone: 'inside' | 'outside' | 'measure-again';
	/** Whether it would pass with the uncertainty left out. */
	readonly withinLimits: boolean;
};

/** Far finer than any gauge: a reading exactly at a limit belongs to the better side of it. */
const SLACK = 1e-12;

/**
 * Judges one measured film against a window when the gauge has an uncertainty: proven inside (by the guarded limits), proven
 * outside, or neither, and then it is measured again or better. Who must prove conformity may accept the first only; who must
 * prove a fault may reject the second only. All in metres, the uncertainty expanded.
 */
export const judgeReading = defineProcedure<
	{ measured: Metre; min: Metre; max: Metre; uncertainty: Metre },
	ReadingVerdict
>({
	id: 'judge-reading',
	title: { en: 'Film reading with its uncertainty', es: 'Lectura de película con su incertidumbre' },
	equation: 'inside: min + U ≤ x ≤ max − U; outside: x < min − U or x > max + U; else measure again',
	source: cite('ilac-g8', '4.2.3', { read: 'pages 8 and 10 of G8:09/2019' }),
	inputs: { measured: 'length', min: 'length', max: 'length', uncertainty: 'length' },
	validFor: { measured: [0, 1], min: [0, 1], max: [0, 1], uncertainty: [0, 1] },
	compute({ measured, ...window }) {
		const { inside, outside } = guardedLimits.at(window);
		const between = ({ min, max }: { min: Metre; max: Metre }) =>
			measured >= min - SLACK && measured <= max + SLACK;
		const proven = inside !== null && between(inside);
		return {
			zone: proven ? 'inside' : between(outside) ? 'measure-again' : 'outside',
			withinLimits: between(window)
		};
	}
});

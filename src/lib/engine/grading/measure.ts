import { limits, type Expectation } from '../rules/expectation';
import type { Answer } from './answer';
import { SAME } from '../units/same';

/** How one answer stands to one expectation. */
export type Measure = {
	readonly zone: 'green' | 'amber' | 'red';
	/** Which way it is off; `wrong` where there is no low or high. */
	readonly off: 'low' | 'high' | 'wrong' | null;
	/** Distance beyond the window in SI, 0 inside it and where there is no distance. */
	readonly beyond: number;
	/** 1 in green, falling to 0 across amber, 0 in red. Only practice shows it. */
	readonly credit: number;
};

const GREEN: Measure = { zone: 'green', off: null, beyond: 0, credit: 1 };
const WRONG: Measure = { zone: 'red', off: 'wrong', beyond: 0, credit: 0 };

type Quantity = Extract<Answer, { kind: 'quantity' }>;

function numeric({ value, rounding = 0 }: Quantity, window: NonNullable<ReturnType<typeof limits>>): Measure {
	// an infinite answer would make the room infinite too, and pass
	if (!Number.isFinite(value)) return WRONG;
	const exact = SAME * Math.max(1e-6, Math.abs(value));
	// a limit shown rounded in another unit and typed as shown is that limit
	const room = exact + rounding;
	const low = window.min - value;
	const high = value - window.max;
	// a strict limit is not rounded away
	const outside = window.open ? high >= -exact : high > room;
	if (low <= room && !outside) return GREEN;
	const off = outside ? 'high' : 'low';
	const beyond = Math.max(low, high, 0);
	if (beyond <= window.amber && window.amber > 0)
		return { zone: 'amber', off, beyond, credit: 1 - beyond / window.amber };
	return { zone: 'red', off, beyond, credit: 0 };
}

/** A misread instrument is off by as much, but sets nothing too low or too high. */
function number(answer: Quantity, expectation: Expectation): Measure {
	const measured = numeric(answer, limits(expectation)!);
	const misread = expectation.kind === 'computed' && expectation.reading && measured.off;
	return misread ? { ...measured, off: 'wrong' } : measured;
}

type Of<K extends Expectation['kind']> = Extract<Expectation, { kind: K }>;

function allOf(ticked: readonly string[], { options, not }: Of<'all-of'>): Measure {
	if (!options.every((option) => ticked.includes(option))) return { ...WRONG, off: 'low' };
	return not?.some((option) => ticked.includes(option)) ? { ...WRONG, off: 'high' } : GREEN;
}

function inOrder(steps: readonly string[], { before, leads }: Of<'order'>): Measure {
	const once = steps.every((step, index) => steps.indexOf(step) === index);
	const kept = before.every(([first, then]) => {
		const at = steps.indexOf(first);
		return at >= 0 && at < steps.indexOf(then);
	});
	return once && kept ? GREEN : { ...WRONG, off: leads ?? 'wrong' };
}

/** Options picked or ticked where some are barred; undefined for an answer without any. */
const picked = (answer: Answer): readonly string[] | undefined =>
	answer.kind === 'choice' ? [answer.option] : answer.kind === 'choices' ? answer.options : undefined;

/** Measures an answer; one of the wrong kind, or none at all, is red. */
export function measure(answer: Answer | null | undefined, expectation: Expectation): Measure {
	if (!answer) return WRONG;
	switch (expectation.kind) {
		case 'one-of':
			if (answer.kind !== 'choice') return WRONG;
			if (expectation.options.includes(answer.option)) return GREEN;
			return { ...WRONG, off: expectation.leads?.[answer.option] ?? 'wrong' };
		case 'none-of': {
			const barred = picked(answer)?.some((option) => expectation.options.includes(option)) ?? true;
			return barred ? WRONG : GREEN;
		}
		case 'all-of':
			return answer.kind === 'choices' ? allOf(answer.options, expectation) : WRONG;
		case 'order':
			return answer.kind === 'order' ? inOrder(answer.options, expectation) : WRONG;
		default:
			return answer.kind === 'quantity' ? number(answer, expectation) : WRONG;
	}
}

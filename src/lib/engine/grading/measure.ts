import { limits, type Expectation } from '../rules/expectation';
import type { Answer } from './answer';

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

/** Room for the last binary digit of a converted unit, so that a typed limit counts as the limit. */
const SAME = 1e-9;

type Quantity = Extract<Answer, { kind: 'quantity' }>;

function numeric({ value, rounding = 0 }: Quantity, window: NonNullable<ReturnType<typeof limits>>): Measure {
	// an infinite answer would make the room infinite too, and pass
	if (!Number.isFinite(value)) return WRONG;
	const exact = SAME * Math.max(1e-6, Math.abs(value));
	// a limit shown rounded in another unit and typed as shown is that limit; a strict limit is not rounded away
	const room = exact + (window.open ? 0 : rounding);
	const low = window.min - value;
	const high = value - window.max;
	const outside = window.open ? high >= -exact : high > room;
	if (low <= room && !outside) return GREEN;
	const off = low > room ? 'low' : 'high';
	const beyond = Math.max(low, high, 0);
	if (beyond <= window.amber && window.amber > 0)
		return { zone: 'amber', off, beyond, credit: 1 - beyond / window.amber };
	return { zone: 'red', off, beyond, credit: 0 };
}

/** The kinds of answer that an expectation about options can be met with. */
const ANSWERS_TO = {
	'one-of': ['choice'],
	'none-of': ['choice', 'choices'],
	'all-of': ['choices'],
	order: ['order']
} as const satisfies Partial<Record<Expectation['kind'], readonly Answer['kind'][]>>;

type OfOptions = Extract<Expectation, { kind: keyof typeof ANSWERS_TO }>;

function chosen(options: readonly string[], expectation: OfOptions): Measure {
	switch (expectation.kind) {
		case 'one-of':
			return expectation.options.includes(options[0]!) ? GREEN : WRONG;
		case 'none-of':
			return options.some((option) => expectation.options.includes(option)) ? WRONG : GREEN;
		case 'all-of':
			if (!expectation.options.every((option) => options.includes(option))) return { ...WRONG, off: 'low' };
			return options.some((option) => expectation.not?.includes(option)) ? { ...WRONG, off: 'high' } : GREEN;
		case 'order': {
			const at = (option: string) => options.indexOf(option);
			const once = new Set(options).size === options.length;
			const kept = expectation.before.every(
				([first, then]) => at(first) >= 0 && at(then) >= 0 && at(first) < at(then)
			);
			return once && kept ? GREEN : WRONG;
		}
	}
}

const isOfOptions = (expectation: Expectation): expectation is OfOptions => expectation.kind in ANSWERS_TO;

/** Measures an answer; one of the wrong kind, or none at all, is red. */
export function measure(answer: Answer | undefined, expectation: Expectation): Measure {
	if (!answer) return WRONG;
	if (isOfOptions(expectation)) {
		const kinds: readonly Answer['kind'][] = ANSWERS_TO[expectation.kind];
		if (answer.kind === 'quantity' || !kinds.includes(answer.kind)) return WRONG;
		return chosen(answer.kind === 'choice' ? [answer.option] : answer.options, expectation);
	}
	const window = limits(expectation);
	return window && answer.kind === 'quantity' ? numeric(answer, window) : WRONG;
}

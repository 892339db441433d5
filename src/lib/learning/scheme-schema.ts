import * as v from 'valibot';
import { operatingCharacteristic } from './operating-characteristic';
import { chanceOfClearing } from './safety-chance';
import type { Scheme } from './scheme';
import { schemeDefaults } from './scheme-defaults';
import type { SchemeLimit } from './scheme-limit';

const onStep = (value: number, step: number) => Math.abs(value / step - Math.round(value / step)) < 1e-6;

const numberOf = ({ min, max, step }: SchemeLimit) =>
	v.pipe(
		v.number('not-a-number'),
		v.minValue(min, 'too-small'),
		v.maxValue(max, 'too-large'),
		v.check((value) => onStep(value, step), 'off-step')
	);

type Numbers<Limits> = { readonly [Key in keyof Limits]: ReturnType<typeof numberOf> };

function group<Limits extends Record<string, SchemeLimit>>(limits: Limits) {
	const fields = Object.entries(limits).map(([key, limit]) => [key, numberOf(limit)]);
	return v.strictObject(Object.fromEntries(fields) as Numbers<Limits>, 'not-this-form');
}

// A check across fields may only see numbers already found within their limits: it counts paths up to them.
const early = { abortPipeEarly: true };

const sequential = v.config(
	v.pipe(
		group(schemeDefaults.sequential),
		v.check(({ p0, p1 }) => p0 < p1, 'p0-not-below-p1'),
		v.check(({ truncateAt, passAtTruncation }) => passAtTruncation <= truncateAt, 'more-right-than-drills'),
		v.check((plan) => operatingCharacteristic(plan, plan.p0).pass <= plan.alpha, 'passes-too-many-unfit'),
		v.check((plan) => operatingCharacteristic(plan, plan.p1).fail <= plan.beta, 'fails-too-many-fit')
	),
	early
);

const safety = v.config(
	v.pipe(
		group(schemeDefaults.safety),
		v.check(({ cleanRun, oneMissRun }) => cleanRun < oneMissRun, 'clean-run-not-shorter'),
		v.check((plan) => chanceOfClearing(plan, plan.unsafeRate) <= plan.risk, 'clears-too-many-unsafe')
	),
	early
);

const validity = v.config(
	v.pipe(
		group(schemeDefaults.validity),
		v.check(({ months, monthsWithSafety }) => monthsWithSafety <= months, 'safety-holds-longer')
	),
	early
);

const notice = v.config(
	v.pipe(
		group(schemeDefaults.notice),
		v.check((days) => days.firstDays > days.secondDays, 'not-descending'),
		v.check((days) => days.secondDays > days.lastDays, 'not-descending')
	),
	early
);

/**
 * What a scheme must be: every number within its limits, and plans that keep their own exact risks. Messages are
 * codes; the screen words them.
 */
export const schemeSchema: v.GenericSchema<unknown, Scheme> = v.strictObject(
	{
		sequential,
		safety,
		validity,
		continuity: group(schemeDefaults.continuity),
		renewal: group(schemeDefaults.renewal),
		retest: group(schemeDefaults.retest),
		drill: group(schemeDefaults.drill),
		notice
	},
	'not-this-form'
);

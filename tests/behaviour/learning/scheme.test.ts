import { describe, expect, it } from 'vitest';
import {
	defaultScheme,
	readScheme,
	schemeDefaults,
	shortestTruncation,
	type SchemeLimit
} from '$lib/learning';

const limits: [string, SchemeLimit][] = Object.entries(schemeDefaults).flatMap(([group, fields]) =>
	Object.entries(fields).map(([key, limit]): [string, SchemeLimit] => [`${group}.${key}`, limit])
);

const changed = (path: string, value: unknown): unknown => {
	const [group, key] = path.split('.') as ['retest', string];
	return { ...defaultScheme, [group]: { ...defaultScheme[group], [key]: value } };
};

const problems = (input: unknown) => {
	const result = readScheme(input);
	return result.ok ? [] : result.problems;
};

describe('the default scheme', () => {
	it('is a scheme', () => expect(readScheme(defaultScheme)).toEqual({ ok: true, scheme: defaultScheme }));

	it('is the shop policy, and says so at every number', () => {
		for (const [, { provenance }] of limits)
			expect(provenance).toEqual({ origin: 'shop', verification: 'memory' });
	});

	it.each(limits)('%s lies within its own limits', (_path, { value, min, max }) => {
		expect(value).toBeGreaterThanOrEqual(min);
		expect(value).toBeLessThanOrEqual(max);
	});

	it('holds the numbers decided', () =>
		expect(defaultScheme).toMatchObject({
			sequential: { p0: 0.7, p1: 0.9, alpha: 0.05, beta: 0.1, truncateAt: 45, passAtTruncation: 38 },
			safety: { cleanRun: 32, oneMissRun: 52, restarts: 2 },
			validity: { months: 24, monthsWithSafety: 12, reevaluationMonths: 36 },
			continuity: { months: 6, lateDays: 30 },
			retest: { most: 2, daysApart: 7, newApplicationDays: 30 },
			drill: { openHours: 24 }
		}));
});

describe('a scheme from outside', () => {
	it.each(limits)('is refused with %s below, above or beside its limits', (path, { min, max, step }) => {
		expect(problems(changed(path, min - step))).toContainEqual({ at: path, problem: 'too-small' });
		expect(problems(changed(path, max + step))).toContainEqual({ at: path, problem: 'too-large' });
		expect(problems(changed(path, min + step / 2))).toContainEqual({ at: path, problem: 'off-step' });
		expect(problems(changed(path, String(min)))).toContainEqual({ at: path, problem: 'not-a-number' });
		expect(problems(changed(path, NaN))).toContainEqual({ at: path, problem: 'not-a-number' });
		expect(problems(changed(path, undefined))).not.toHaveLength(0);
	});

	it.each([null, undefined, 'scheme', [], 7, {}])('is refused as %o', (input) =>
		expect(readScheme(input).ok).toBe(false)
	);

	it('is refused with anything more in it', () => {
		expect(problems({ ...defaultScheme, extra: 1 })).toEqual([{ at: 'extra', problem: 'not-this-form' }]);
		expect(problems(changed('retest.extra', 1))).toEqual([{ at: 'retest.extra', problem: 'not-this-form' }]);
	});

	it.each([
		['sequential.p0', 0.9, 'sequential', 'p0-not-below-p1'],
		['sequential.passAtTruncation', 46, 'sequential', 'more-right-than-drills'],
		['sequential.passAtTruncation', 37, 'sequential', 'passes-too-many-unfit'],
		['sequential.passAtTruncation', 39, 'sequential', 'fails-too-many-fit'],
		['sequential.truncateAt', 44, 'sequential', 'fails-too-many-fit'],
		['safety.oneMissRun', 32, 'safety', 'clean-run-not-shorter'],
		['safety.cleanRun', 31, 'safety', 'clears-too-many-unsafe'],
		['validity.monthsWithSafety', 25, 'validity', 'safety-holds-longer'],
		['notice.secondDays', 60, 'notice', 'not-descending'],
		['notice.lastDays', 30, 'notice', 'not-descending']
	])('is refused with %s at %f: %s %s', (path, value, at, problem) =>
		expect(problems(changed(path, value))).toEqual([{ at, problem }])
	);

	it('does not reckon with a run too long to be reckoned', () =>
		expect(problems(changed('sequential.truncateAt', 1e12))).toEqual([
			{ at: 'sequential.truncateAt', problem: 'too-large' }
		]));

	it('may be stricter', () => {
		const limits = { p0: 0.8, p1: 0.95, alpha: 0.05, beta: 0.1 };
		const sequential = shortestTruncation(limits, 150);
		expect(sequential).not.toBeNull();
		expect(readScheme({ ...defaultScheme, sequential }).ok).toBe(true);
	});
});

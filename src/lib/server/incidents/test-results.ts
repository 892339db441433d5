import type { Circumstances, Direction } from '$lib/engine';
import type { Incident } from '$lib/records';

const DIRECTIONS: readonly string[] = ['low', 'high', 'wrong'] satisfies Direction[];

/** What a test of a cause can have shown: that the rule was kept, which way it was broken, or nothing clear. */
export type Shown = Direction | 'kept' | 'unclear';

/** A result as the record keeps it: the test is the rule's own, with the direction it showed. */
export const asRecorded = (rule: string, shown: Shown) =>
	shown === 'kept'
		? { test: rule, found: 'no' as const, rules: [] }
		: shown === 'unclear'
			? { test: rule, found: 'unclear' as const, rules: [rule] }
			: { test: `${rule}:${shown}`, found: 'yes' as const, rules: [rule] };

type Recorded = Pick<Incident['tests'][number], 'test' | 'found'>;

/** The rule a result is about and what it showed, read back from the record. */
export function shownBy({ test, found }: Recorded): { rule: string; shown: Shown } {
	const [rule = test, direction = ''] = test.split(':');
	if (found === 'yes')
		return { rule, shown: DIRECTIONS.includes(direction) ? (direction as Direction) : 'wrong' };
	return { rule, shown: found === 'no' ? 'kept' : 'unclear' };
}

/** The latest result of each rule's test. One that showed nothing clear takes an earlier one back. */
export function testsSoFar(recorded: readonly Recorded[]): NonNullable<Circumstances['tests']> {
	const tests: Record<string, Direction | 'kept'> = {};
	for (const { rule, shown } of recorded.map(shownBy)) {
		if (shown === 'unclear') delete tests[rule];
		else tests[rule] = shown;
	}
	return tests;
}

import { describe, expect, test } from 'vitest';
import { asRecorded, shownBy, testsSoFar, type Shown } from '$lib/server/incidents/test-results';

describe('the result of a test', () => {
	test.each(['low', 'high', 'wrong', 'kept', 'unclear'] satisfies Shown[])(
		'%s is read back as entered',
		(shown) => {
			expect(shownBy(asRecorded('flash-time', shown))).toEqual({ rule: 'flash-time', shown });
		}
	);

	test('leaves the rule as likely unless it was kept', () => {
		expect(asRecorded('flash-time', 'kept').rules).toEqual([]);
		expect(asRecorded('flash-time', 'unclear').rules).toEqual(['flash-time']);
	});
});

test('the latest result counts, and an unclear one takes the one before back', () => {
	const so = (...shown: Shown[]) => testsSoFar(shown.map((one) => asRecorded('flash-time', one)));
	expect(so('low', 'kept')).toEqual({ 'flash-time': 'kept' });
	expect(so('kept', 'low')).toEqual({ 'flash-time': 'low' });
	expect(so('low', 'unclear')).toEqual({});
});

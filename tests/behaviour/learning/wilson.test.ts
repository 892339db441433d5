import { describe, expect, it } from 'vitest';
import { wilsonInterval } from '$lib/learning';

describe('the interval for a share', () => {
	it.each([
		[12, 12, 0.7575, 1],
		[16, 17, 0.7302, 0.9895],
		[21, 23, 0.732, 0.9758],
		[27, 30, 0.7438, 0.9654],
		[45, 50, 0.7864, 0.9565]
	])('%i of %i', (right, n, low, high) => {
		const interval = wilsonInterval(right, n);
		expect(interval.low).toBeCloseTo(low, 4);
		expect(interval.high).toBeCloseTo(high, 4);
	});

	it.each([
		[1, 0],
		[0, 0],
		[-1, 5],
		[6, 5],
		[NaN, 5]
	])('refuses %f of %f', (right, n) => expect(() => wilsonInterval(right, n)).toThrow(RangeError));
});

import { describe, expect, it } from 'vitest';
import { createThrottle } from '$lib/server/throttle';

const PATIENCE = { free: 2, firstWait: 1000, longestWait: 5000, memory: 60_000 };

describe('wrong tries', () => {
	it('wait longer each time, up to a longest wait', () => {
		const tries = createThrottle(PATIENCE);
		const waits = [0, 1, 2, 3, 4, 5].map(() => {
			const wait = tries.waitFor('p1', 0);
			tries.countWrong('p1', 0);
			return wait;
		});
		expect(waits).toEqual([0, 0, 1000, 2000, 4000, 5000]);
	});

	it('are looked at again when the wait is over, and not a moment before', () => {
		const tries = createThrottle(PATIENCE);
		tries.countWrong('p1', 0);
		tries.countWrong('p1', 100);
		expect(tries.waitFor('p1', 1099)).toBe(1);
		expect(tries.waitFor('p1', 1100)).toBe(0);
	});

	it('of one do not hold up another', () => {
		const tries = createThrottle(PATIENCE);
		for (let i = 0; i < 9; i++) tries.countWrong('p1', 0);
		expect(tries.waitFor('p2', 0)).toBe(0);
	});

	it('are forgotten after a long quiet time or when cleared', () => {
		const tries = createThrottle(PATIENCE);
		for (const person of ['p1', 'p2']) for (let i = 0; i < 9; i++) tries.countWrong(person, 0);
		tries.clear('p2');
		expect(tries.waitFor('p2', 0)).toBe(0);
		expect(tries.waitFor('p1', 4999)).toBe(1);
		tries.countWrong('p1', 59_000);
		expect(tries.waitFor('p1', 60_000)).toBe(4000);
		expect(tries.waitFor('p1', 119_000)).toBe(0);
	});

	it('can be taken back one at a time', () => {
		const tries = createThrottle(PATIENCE);
		for (let i = 0; i < 3; i++) tries.countWrong('address', 0);
		tries.takeBack('address');
		expect(tries.waitFor('address', 0)).toBe(1000);
		tries.takeBack('address');
		tries.takeBack('address');
		tries.takeBack('address');
		expect(tries.waitFor('address', 0)).toBe(0);
	});
});

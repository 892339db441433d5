import * as v from 'valibot';
import { expect, test } from 'vitest';
import { canonical, contentHash, json, type Json } from '$lib/records';

test('what has no canonical text (RFC 8785 3.2.2.2, 3.2.2.3) is no JSON of ours and is never written', () => {
	for (const value of [NaN, Infinity, -Infinity, '\ud800', 'a\udc00b', { '\ud800': 1 }, [{ a: [NaN] }]]) {
		expect(() => canonical(value as Json)).toThrow();
		expect(v.is(json, value)).toBe(false);
	}
});

test('what only looks like JSON is none', () => {
	for (const value of [
		undefined,
		() => 1,
		Symbol('a'),
		1n,
		new Date(),
		new Map(),
		[undefined],
		{ a: undefined }
	])
		expect(v.is(json, value)).toBe(false);
	expect(v.is(json, { a: [1, 'b', null, { c: true }] })).toBe(true);
});

test('equal content has one name, whatever the order of its keys', () => {
	expect(contentHash({ a: 1, b: [2, { d: 3, c: 4 }] })).toBe(contentHash({ b: [2, { c: 4, d: 3 }], a: 1 }));
	expect(contentHash([1, 2])).not.toBe(contentHash([2, 1]));
});

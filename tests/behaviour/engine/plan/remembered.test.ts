import { expect, it } from 'vitest';
import { remembered } from '../../../../src/lib/engine/plan/remembered';

it('works out each thing once, and nothing is a fact like any other', () => {
	const asked: object[] = [];
	const fact = remembered((about: { readonly value: number | undefined }) => {
		asked.push(about);
		return about.value;
	});
	const [one, same, none] = [{ value: 1 }, { value: 1 }, { value: undefined }];
	expect([fact(one), fact(one), fact(same), fact(none), fact(none)]).toEqual([1, 1, 1, undefined, undefined]);
	expect(asked).toEqual([one, same, none]);
});

it('remembers by name in a map', () => {
	let times = 0;
	const length = remembered((name: string) => {
		times += 1;
		return name.length;
	}, new Map());
	expect([length('plate'), length('plate'), length('bar')]).toEqual([5, 5, 3]);
	expect(times).toBe(2);
});

it('does not remember work that failed', () => {
	let times = 0;
	const fact = remembered((about: object) => {
		times += 1;
		if (times === 1) throw new Error('first');
		return about;
	});
	const about = {};
	expect(() => fact(about)).toThrow('first');
	expect(fact(about)).toBe(about);
});

import { describe, expect, it } from 'vitest';
import { readSignature } from '$lib/server/standing/signature-form';

const form = (entries: readonly (readonly [string, string | Blob])[]) => {
	const data = new FormData();
	for (const [name, value] of entries) data.append(name, value);
	return data;
};

const answered = [
	['trained', 'no'],
	['lineManager', 'yes'],
	['relative', 'no'],
	['paidByResult', 'no']
] as const;

describe('a declaration', () => {
	it('has no answer by itself', () => {
		const { ok, problems } = readSignature(form([['watchedBy', 'nobody']]));
		expect(ok).toBe(false);
		expect(Object.keys(problems).sort()).toEqual(['lineManager', 'paidByResult', 'relative', 'trained']);
	});

	it('is taken as it was given', () => {
		const read = readSignature(form([...answered, ['watchedBy', 'nobody']]));
		expect(read).toMatchObject({
			ok: true,
			watchedBy: [],
			conflict: { trained: false, lineManager: true, relative: false, paidByResult: false }
		});
	});

	it('takes no other word and no file for an answer', () => {
		const hostile = form([
			['trained', 'maybe'],
			['relative', new Blob(['no'])],
			['lineManager', 'no'],
			['paidByResult', 'no'],
			['watchedBy', 'nobody']
		]);
		expect(readSignature(hostile).problems).toEqual({ trained: 'unanswered', relative: 'unanswered' });
	});
});

describe('who watched', () => {
	it.each([
		[[], 'no-watcher'],
		[['nobody', 'p-1'], 'nobody-and-somebody']
	] as const)('%j is a problem: %s', (watchers, problem) => {
		const read = readSignature(form([...answered, ...watchers.map((id) => ['watchedBy', id] as const)]));
		expect(read.problems).toEqual({ watchedBy: problem });
	});

	it('lists each of them once', () => {
		const twice = ['p-1', 'p-2', 'p-1'].map((id) => ['watchedBy', id] as const);
		expect(readSignature(form([...answered, ...twice])).watchedBy).toEqual(['p-1', 'p-2']);
	});
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { canonical, sha256, verify, type Json } from '$lib/records';
import { seal } from '$lib/records/chain';
import { testShop } from './test-shop';

const linesOf = async () => [...(await (await testShop()).adapter.read())!];

/** A line changed by somebody who knows how to make its own hash right again. */
const reseal = (line: string, change: Record<string, Json>) => {
	const entry = JSON.parse(line);
	delete entry.hash;
	return seal({ ...entry, ...change });
};

describe('an untouched journal', () => {
	test('is whole, and its head is the hash of its last entry', async () => {
		const lines = await linesOf();
		expect(verify(lines)).toEqual({ ok: true, count: lines.length, head: JSON.parse(lines.at(-1)!).hash });
		expect(verify([])).toEqual({ ok: true, count: 0, head: '0'.repeat(64) });
	});
});

describe('the first line that does not belong is named', () => {
	test.each<[string, (lines: string[]) => void, { line: number; why: string }]>([
		[
			'a changed value',
			(lines) => (lines[6] = lines[6]!.replace('sup-2', 'sup-9')),
			{ line: 7, why: 'wrong-hash' }
		],
		['white space', (lines) => (lines[3] += ' '), { line: 4, why: 'not-canonical' }],
		['half a line', (lines) => (lines[3] = lines[3]!.slice(0, 40)), { line: 4, why: 'not-json' }],
		['another thing', (lines) => (lines[3] = '{"a":1}'), { line: 4, why: 'not-an-entry' }],
		['an empty line', (lines) => lines.splice(3, 0, ''), { line: 4, why: 'not-json' }],
		['a removed line', (lines) => lines.splice(5, 1), { line: 6, why: 'wrong-number' }],
		[
			'two lines swapped',
			(lines) => ([lines[4], lines[5]] = [lines[5]!, lines[4]!]),
			{ line: 5, why: 'wrong-number' }
		],
		['a line twice', (lines) => lines.splice(4, 0, lines[3]!), { line: 5, why: 'wrong-number' }],
		[
			'a changed line with its hash made anew',
			(lines) => (lines[6] = reseal(lines[6]!, { actor: 'lead-9' })),
			{ line: 8, why: 'wrong-link' }
		],
		[
			'an unknown event',
			(lines) => (lines[lines.length - 1] = reseal(lines.at(-1)!, { event: 'person.promoted' })),
			{ line: 12, why: 'unknown-event' }
		],
		[
			'an event of nobody (inherited name)',
			(lines) => (lines[lines.length - 1] = reseal(lines.at(-1)!, { event: 'toString' })),
			{ line: 12, why: 'unknown-event' }
		],
		[
			'data of another shape',
			(lines) => (lines[lines.length - 1] = reseal(lines.at(-1)!, { data: { person: 'x' } })),
			{ line: 12, why: 'wrong-data' }
		],
		[
			'a time before the entry above',
			(lines) => (lines[lines.length - 1] = reseal(lines.at(-1)!, { at: '2026-01-01T00:00:00.000Z' })),
			{ line: 12, why: 'earlier-than-before' }
		],
		[
			'an act that is not whole',
			(lines) => lines.splice(lines.length - 1),
			{ line: 11, why: 'act-cut-short' }
		]
	])('%s', async (_, damage, found) => {
		const lines = await linesOf();
		expect(lines).toHaveLength(12);
		damage(lines);
		expect(verify(lines)).toMatchObject({ ok: false, ...found });
	});

	test('any one character changed anywhere is found at its line', async () => {
		const lines = await linesOf();
		fc.assert(
			fc.property(
				fc.nat(lines.length - 1),
				fc.nat(5000),
				fc.constantFrom('x', '0', '"', ' '),
				(n, where, to) => {
					const line = lines[n]!;
					const at = where % line.length;
					fc.pre(line[at] !== to);
					const changed = [...lines];
					changed[n] = line.slice(0, at) + to + line.slice(at + 1);
					expect(verify(changed)).toMatchObject({ ok: false, line: n + 1 });
				}
			),
			{ numRuns: 500 }
		);
	});
});

// Regression only: these two hashes are our own arithmetic (SHA-256 over canonical JSON), not a published vector.
test('the chain of two entries stays what it was when first computed', () => {
	const granted = {
		actor: 'sup-07',
		at: '2026-11-25T07:02:58Z',
		event: 'signoff.granted',
		prev: '0'.repeat(64),
		subject: 'trn-12'
	};
	const first = 'bf36bd686dfc4dbb9c4735f3e2c541268cfadb5e17e376e77a7badf4b47a9cff';
	expect(JSON.parse(seal(granted)).hash).toBe(first);
	const withdrawn = {
		actor: 'sup-07',
		at: '2026-11-25T07:05:00Z',
		event: 'signoff.withdrawn',
		prev: first,
		reason: 'wrong scope',
		subject: 'trn-12'
	};
	expect(sha256(canonical(withdrawn))).toBe(
		'22a2b912f077d42d3c7dc3462ccd6f732e6815e6d202a78113f74a961ff8f3a4'
	);
});

import { Memory, type Adapter } from 'lowdb';
import { describe, expect, test } from 'vitest';
import { accept, addPerson, foldEntries, Journal, refuse, verify } from '$lib/records';
import { requirements, testShop, words } from './test-shop';

const at = (time: string) => ({ clock: () => new Date(time), requirements });
const note = (bytes: number) => () => accept({ event: 'journal.repaired' as const, data: { bytes } });

/** Keeps what was written apart from the array it was handed, as a disk does. */
class Disk implements Adapter<string[]> {
	lines: string[] = [];
	writes = 0;
	failing = false;
	async read() {
		return [...this.lines];
	}
	async write(lines: string[]) {
		this.writes += 1;
		await new Promise((done) => setTimeout(done, 1));
		if (this.failing) throw new Error('disk full');
		this.lines = [...lines];
	}
}

describe('appending', () => {
	test('40 acts at once land one after the other, in the order they came', async () => {
		const disk = new Disk();
		const journal = await Journal.open(disk, at('2026-03-02T15:00:00Z'));
		const outcomes = await Promise.all(
			Array.from({ length: 40 }, (_, i) => journal.act(note(i + 1), 'program'))
		);
		expect(outcomes.every(({ ok }) => ok)).toBe(true);
		expect(disk.lines.map((line) => JSON.parse(line).data.bytes)).toEqual(
			Array.from({ length: 40 }, (_, i) => i + 1)
		);
		expect(verify(disk.lines)).toMatchObject({ ok: true, count: 40, head: journal.head.hash });
	});

	test('each act is decided from the state the one before left', async () => {
		const journal = await Journal.open(new Disk(), at('2026-03-02T15:00:00Z'));
		const seen: number[] = [];
		await Promise.all(
			[1, 2, 3].map((bytes) =>
				journal.act(() => {
					seen.push(journal.entries.length);
					return note(bytes)();
				}, 'program')
			)
		);
		expect(seen).toEqual([0, 1, 2]);
	});

	test('a failed write is as if it had not been asked for', async () => {
		const disk = new Disk();
		const journal = await Journal.open(disk, at('2026-03-02T15:00:00Z'));
		await journal.act(note(1), 'program');
		const before = { head: journal.head, state: structuredClone(journal.state) };
		disk.failing = true;
		await expect(journal.act(note(2), 'program')).rejects.toThrow('disk full');
		expect({ head: journal.head, state: journal.state }).toEqual(before);
		expect(journal.entries).toHaveLength(1);

		disk.failing = false;
		await journal.act(note(3), 'program');
		expect(disk.lines.map((line) => JSON.parse(line).data.bytes)).toEqual([1, 3]);
		expect(verify(disk.lines).ok).toBe(true);
	});

	test('a refusal writes nothing, unless it is to be logged', async () => {
		const disk = new Disk();
		const journal = await Journal.open(disk, at('2026-03-02T15:00:00Z'));
		const no = () => refuse('own-record');
		expect(await journal.act(no, 'sup-1')).toMatchObject({ ok: false });
		expect(disk.writes).toBe(0);
		await journal.act(no, 'sup-1', { what: 'sign-off', person: 'sup-1' });
		await journal.act(no, 'sup-1', { what: 'sign-off', person: 'not an id <script>' });
		expect(journal.entries.map(({ event, data }) => [event, data])).toEqual([
			['act.refused', { what: 'sign-off', code: 'own-record', person: 'sup-1' }],
			['act.refused', { what: 'sign-off', code: 'own-record', person: null }]
		]);
	});

	test('data of the wrong shape is refused with its field, not written', async () => {
		const disk = new Disk();
		const journal = await Journal.open(disk, at('2026-03-02T15:00:00Z'));
		expect(await journal.act(note(-3), 'program')).toMatchObject({
			ok: false,
			refusal: { code: 'malformed', field: 'bytes' }
		});
		const withNames = { bytes: 3, name: 'Somebody' };
		expect(
			await journal.act(() => accept({ event: 'journal.repaired', data: withNames }), 'program')
		).toMatchObject({ ok: false, refusal: { code: 'malformed', field: 'name' } });
		expect(disk.writes).toBe(0);
	});

	test('an act of no events writes nothing', async () => {
		const disk = new Disk();
		const journal = await Journal.open(disk, at('2026-03-02T15:00:00Z'));
		expect(await journal.act(() => accept(), 'program')).toEqual({ ok: true, entries: [] });
		expect(disk.writes).toBe(0);
	});
});

describe('the clock', () => {
	test('a clock set back shows in the record before anything is entered under it', async () => {
		let now = '2026-03-02T15:00:00.000Z';
		const journal = await Journal.open(new Disk(), { clock: () => new Date(now), requirements });
		await journal.act(note(1), 'program');
		now = '2026-03-01T15:00:00.000Z';
		await journal.act(note(2), 'program');
		expect(journal.entries.map(({ event }) => event)).toEqual([
			'journal.repaired',
			'clock.set-back',
			'journal.repaired'
		]);
		expect(journal.entries[1]?.data).toEqual({ from: '2026-03-02T15:00:00.000Z', to: now });
	});

	test('a clock steered by seconds does not run backwards in the record', async () => {
		let now = '2026-03-02T15:00:00.000Z';
		const journal = await Journal.open(new Disk(), { clock: () => new Date(now), requirements });
		await journal.act(note(1), 'program');
		now = '2026-03-02T14:59:58.000Z';
		await journal.act(note(2), 'program');
		expect(journal.entries.map(({ at }) => at)).toEqual(Array(2).fill('2026-03-02T15:00:00.000Z'));
	});
});

describe('opening', () => {
	test('gives back the same state and goes on with the chain', async () => {
		const shop = await testShop();
		const again = await Journal.open(shop.adapter, at('2026-03-03T15:00:00Z'));
		expect(again.state).toEqual(shop.state);
		expect(again.state).toEqual(foldEntries(shop.journal.entries));
		expect(again.head).toEqual(shop.journal.head);
		expect((await again.act(note(1), 'program')).ok).toBe(true);
		expect(verify((await shop.adapter.read())!).ok).toBe(true);
	});

	test('a line that does not belong makes it read-only from there on', async () => {
		const shop = await testShop();
		const lines = [...(await shop.adapter.read())!];
		lines[4] = lines[4]!.replace('"sup-1"', '"trn-1"');
		const adapter = new Memory<string[]>();
		await adapter.write(lines);
		const journal = await Journal.open(adapter, at('2026-03-03T15:00:00Z'));
		expect(journal.fault).toMatchObject({ line: 5, why: 'wrong-hash' });
		expect(journal.entries).toHaveLength(4);
		expect(await journal.act(note(1), 'program')).toMatchObject({
			ok: false,
			refusal: { code: 'journal-broken', detail: ['5', 'wrong-hash'] }
		});
		expect(await adapter.read()).toEqual(lines);
	});

	test('an act cut short is found even where the adapter did not cut it off', async () => {
		const shop = await testShop();
		const lines = (await shop.adapter.read())!.slice(0, 2);
		const adapter = new Disk();
		adapter.lines = lines;
		const journal = await Journal.open(adapter, at('2026-03-03T15:00:00Z'));
		expect(journal.fault).toMatchObject({ line: 2, why: 'act-cut-short' });
	});
});

test('an id has no room for a name', async () => {
	const shop = await testShop();
	const before = shop.journal.head;
	for (const person of ['Ana López', 'Ana Lopez', '', '../x', 'a'.repeat(200)])
		expect(
			await shop.try(addPerson, { person, name: words('t'), roles: ['trainee'], lang: 'es' }, 'lead-1')
		).toMatchObject({ ok: false, refusal: { code: 'malformed', field: 'person' } });
	expect(shop.journal.head).toEqual(before);
});

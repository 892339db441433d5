import { describe, expect, it } from 'vitest';
import { METRIC } from '$lib/engine';
import { practicalBench } from '$lib/server/standing/practical-bench';
import { gateField, readPractical, readingField } from '$lib/server/standing/practical-form';
import { workedShop } from './worked-shop';

const reader = { lang: 'en', units: METRIC } as const;
const ZONE = 'America/Denver';

async function spraying(changes: Record<string, string> = {}) {
	const { app } = await workedShop();
	const bench = practicalBench(app, 'spraying', 'demo-a-isocyanate')!;
	const form = new FormData();
	const entries: Record<string, string> = {
		day: '2026-03-02',
		time: '06:30',
		panels: 'W1, W2 W3',
		'serial-0': 'DFT-204',
		'due-0': '2026-06-01',
		...Object.fromEntries(bench.plan.gates.map(({ id }) => [gateField(id), 'met'])),
		[readingField('dew-margin', 0)]: '5 °C',
		[readingField('cap-pressure', 0)]: '0.6 bar',
		...Object.fromEntries([0, 1, 2, 3, 4].map((spot) => [readingField('film', spot), '30; 32; 34'])),
		result: 'accepted',
		witnessed: 'yes',
		...changes
	};
	for (const [name, value] of Object.entries(entries)) form.append(name, value);
	return readPractical(form, bench, ZONE, reader);
}

describe('a practical as entered', () => {
	it('keeps raw film readings and holds spot means and their mean against the sheet', async () => {
		const { ok, wish } = await spraying();
		expect(ok).toBe(true);
		const film = wish.readings.filter(({ reading }) => reading.startsWith('film'));
		expect(film.map(({ reading, values }) => [reading, values.length])).toEqual([
			['film-raw', 15],
			['film-spots', 5],
			['film-mean', 1]
		]);
		// demo sheet A: 25 to 40 µm; a spot 0.8 of the least to 1.2 of the most
		expect(film.map(({ least, most }) => [least, most])).toEqual([
			[null, null],
			[20e-6, 48e-6],
			[25e-6, 40e-6]
		]);
		expect(film[2]?.values).toEqual([32e-6]);
	});

	it('takes a mean exactly at a limit for inside, whatever unit it was typed in', async () => {
		const thin = Object.fromEntries(
			[0, 1, 2, 3, 4].map((spot) => [readingField('film', spot), '25; 25; 25'])
		);
		const { wish } = await spraying(thin);
		const mean = wish.readings.find(({ reading }) => reading === 'film-mean');
		expect(mean?.values[0]).toBe(mean?.least);
	});

	it('is dated by the clock of the shop', async () => {
		expect((await spraying()).wish.takenAt).toBe('2026-03-02T13:30:00.000Z');
	});

	it('names panels and instruments as the record keeps them', async () => {
		const { wish } = await spraying();
		expect(wish.panels).toEqual(['W1', 'W2', 'W3']);
		expect(wish.instruments).toEqual([{ instrument: 'DFT-204', calibrationDue: '2026-06-01' }]);
	});

	it.each([
		[{ day: '2026-02-30' }, 'day', 'not-a-day'],
		[{ time: '6h30' }, 'time', 'not-a-time'],
		[{ panels: '' }, 'panels', 'empty'],
		[{ panels: 'panel número uno' }, 'panels', 'not-an-id'],
		[{ 'serial-0': '', 'due-0': '' }, 'serial-0', 'no-instrument'],
		[{ 'serial-1': 'has space' }, 'serial-1', 'not-an-id'],
		[{ [gateField('G7')]: '' }, gateField('G7'), 'unanswered'],
		[{ [gateField('G7')]: 'perhaps' }, gateField('G7'), 'unanswered'],
		[{ [readingField('film', 2)]: '30; 31' }, readingField('film', 2), 'too-few'],
		[{ [readingField('dew-margin', 0)]: '' }, readingField('dew-margin', 0), 'empty'],
		[{ result: '' }, 'result', 'unanswered']
	])('with %j is sent back', async (changes, field, problem) => {
		const { ok, problems, typed } = await spraying(changes as unknown as Record<string, string>);
		expect(ok).toBe(false);
		expect(problems).toEqual({ [field]: problem });
		expect(typed[field]).toBe((changes as Record<string, string>)[field]);
	});

	it('says why a quantity could not be read and keeps it as typed', async () => {
		const field = readingField('cap-pressure', 0);
		const { problems, typed } = await spraying({ [field]: '12 mil' });
		expect(problems[field]).toMatchObject({ quantity: { code: 'wrong-dimension' } });
		expect(typed[field]).toBe('12 mil');
	});

	it('may end early when it is refused', async () => {
		const read = await spraying({ result: 'refused', [readingField('film', 0)]: '' });
		expect(read.problems).toEqual({});
	});
});

import { expect, test } from 'vitest';
import { recordAsCsv } from '$lib/records';
import { testShop } from './test-shop';

const headings = {
	seq: 'No.',
	at: 'When (UTC)',
	actor: 'By',
	event: 'What',
	person: 'About',
	data: 'Data',
	hash: 'Hash'
};

/** Reads rows of quoted and plain cells, as RFC 4180 has them. */
const rowsOf = (csv: string) =>
	csv
		.replace(/^\ufeff/, '')
		.split('\r\n')
		.filter(Boolean)
		.map((line) =>
			[...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(
				([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain
			)
		);

test('has a row for every entry, its data whole', async () => {
	const { journal } = await testShop();
	const csv = recordAsCsv(journal.entries, { headings, nameOf: (person) => person });
	const [first, ...rows] = rowsOf(csv);
	expect(first).toEqual(Object.values(headings));
	expect(rows).toHaveLength(journal.entries.length);
	expect(rows.map(([, , , , , data]) => JSON.parse(data!))).toEqual(journal.entries.map(({ data }) => data));
	expect(rows.map(([, , , , , , hash]) => hash)).toEqual(journal.entries.map(({ hash }) => hash));
	expect(csv.startsWith('\ufeff')).toBe(true);
});

test.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '＝1', '=HYPERLINK("http://x","y")'])(
	'a name that a spreadsheet would calculate (%j) is text',
	async (name) => {
		const { journal } = await testShop();
		const csv = recordAsCsv(journal.entries.slice(0, 1), { headings, nameOf: () => name });
		const cell = csv.split('"shop.founded"')[0]!.split(',shop.founded')[0]!;
		expect(cell).toContain(`'${name.replaceAll('"', '""')}`);
		expect(cell).not.toContain(`,${name}`);
	}
);

test('names with commas, quotes and line breaks stay in their cell', async () => {
	const { journal } = await testShop();
	const csv = recordAsCsv(journal.entries.slice(0, 1), { headings, nameOf: () => 'Núñez, "Zurdo"' });
	expect(rowsOf(csv)[1]?.[2]).toBe('Núñez, "Zurdo"');
});

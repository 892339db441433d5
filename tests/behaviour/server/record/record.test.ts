import { writeFile, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { record } from '$lib/i18n';
import { EVENTS, type EventKind, type JournalEvent } from '$lib/records';
import { openApp } from '$lib/server/app';
import { found } from '$lib/server/found';
import { recordCsv } from '$lib/server/record/record-csv';
import { recordView } from '$lib/server/record/record-view';
import { TOLD } from '$lib/server/record/told';
import { verifyFile } from '$lib/server/record/verify-file';
import { readSettings } from '$lib/server/settings';
import { CHEAP } from '../cheap-scrypt';
import { incidentShop } from '../incidents/incident-shop';
import { tempFolder } from '../temp-folder';

const kinds = Object.keys(EVENTS) as EventKind[];
const founding = {
	lead: 'lead',
	leadName: '=cmd|calc',
	shopName: 'Shop',
	timeZone: 'UTC',
	lang: 'en',
	secret: 'nine copper racks',
	demo: false
} as const;

/** An app with its journal on the disk, as the program runs. */
async function onDisk() {
	const folder = await tempFolder();
	const app = await openApp(readSettings({ DATA_DIR: folder }), { scryptCost: CHEAP });
	await found(app, founding);
	const path = join(folder, 'journal.jsonl');
	const edit = async (change: (text: string) => string) =>
		writeFile(path, change(await readFile(path, 'utf8')));
	return { app, edit };
}

const enter = (app: Awaited<ReturnType<typeof onDisk>>['app'], ...events: JournalEvent[]) =>
	app.journal.act(() => ({ ok: true, events }), 'lead');

test('there are words for every kind of entry in both languages, and for none that does not exist', () => {
	expect(Object.keys(TOLD).toSorted()).toEqual(kinds.toSorted());
	for (const { kind } of [record.en, record.es])
		expect(Object.keys(kind).toSorted()).toEqual(kinds.toSorted());
});

describe('the record', () => {
	test('is shown newest first, in pages, with who did it', async () => {
		const { app } = await incidentShop();
		const all = recordView(app, { kind: '', page: '' }, 'en');
		expect(all.entries[0]?.seq).toBe(app.journal.head.count);
		expect(all.entries.at(-1)).toMatchObject({ kind: 'Shop set up', by: 'Lead' });
		for (let more = 0; more < 60; more += 1)
			await enter(app, { event: 'person.secret-set', data: { person: 'sup' } });
		const pages = ['1', '2', '3'].map((page) => recordView(app, { kind: '', page }, 'en'));
		const seen = pages.slice(0, pages[0]!.pages).flatMap(({ entries }) => entries.map(({ seq }) => seq));
		expect(seen).toEqual(app.journal.entries.map(({ seq }) => seq).reverse());
	});

	test('is narrowed to a kind; an unknown kind or page is none', async () => {
		const { app } = await incidentShop();
		const sheets = recordView(app, { kind: 'sheet.saved', page: '1' }, 'es');
		expect(new Set(sheets.entries.map(({ kind }) => kind))).toEqual(new Set(['Hoja técnica guardada']));
		for (const kind of ['constructor', '../etc', 'act.refused '])
			expect(recordView(app, { kind, page: '-7' }, 'en')).toMatchObject({
				kind: null,
				page: 1,
				count: app.journal.head.count
			});
		expect(recordView(app, { kind: '', page: '999999' }, 'en').page).toBe(1);
	});

	test('says of an erased person that they were erased', async () => {
		const { app } = await incidentShop();
		const ref = app.journal.state.people.get('trn')!.name;
		await enter(app, { event: 'person.erased', data: { person: 'trn', texts: [ref.text] } });
		await app.texts.erase(new Map([[ref.text, '2026-03-02']]));
		const { entries } = recordView(app, { kind: 'person.added', page: '' }, 'en');
		expect(JSON.stringify(entries)).not.toContain('Tess');
		expect(entries.some(({ told }) => told.includes('erased on'))).toBe(true);
	});
});

describe('a proving run that is not over', () => {
	const hash = 'a'.repeat(64);
	const scheme = { scheme: 's', version: 1, hash };
	const issued = {
		event: 'proving.issued',
		data: {
			run: 'r1',
			drill: 'd1',
			person: 'lead',
			kind: 'k',
			seed: 'SEED-77',
			level: 1,
			engineVersion: '1',
			sheets: [],
			shopValuesHash: hash,
			schemeHash: hash,
			ticket: {},
			asked: ['flash-time'],
			rules: [],
			expected: { key: 'ANSWER-KEY' }
		}
	} as const;
	const opened = {
		event: 'proving.opened',
		data: {
			run: 'r1',
			person: 'lead',
			competency: 'curing',
			purpose: 'first',
			incident: null,
			rules: [],
			plan: {},
			scheme
		}
	} as const;
	const handedIn = {
		event: 'proving.handed-in',
		data: {
			run: 'r1',
			drill: 'd1',
			person: 'lead',
			answers: {},
			right: false,
			safetyMisses: [],
			findings: ['FOUND-IT']
		}
	} as const;
	const concluded = {
		event: 'proving.concluded',
		data: { run: 'r1', person: 'lead', verdict: 'failed', drills: 1, right: 0 }
	} as const;

	test('keeps its answers and results to itself until the verdict, on the screen and in the table', async () => {
		const { app } = await incidentShop();
		await enter(
			app,
			structuredClone(opened) as unknown as JournalEvent,
			structuredClone(issued) as unknown as JournalEvent
		);
		await enter(app, structuredClone(handedIn) as unknown as JournalEvent);
		const told = () =>
			JSON.stringify(recordView(app, { kind: '', page: '' }, 'en')) + recordCsv(app, 'en').content;
		for (const secret of ['SEED-77', 'ANSWER-KEY', 'FOUND-IT', 'not right'])
			expect(told()).not.toContain(secret);
		await enter(app, concluded as unknown as JournalEvent);
		for (const shown of ['SEED-77', 'ANSWER-KEY', 'FOUND-IT', 'not right']) expect(told()).toContain(shown);
	});
});

test('the table begins with a byte order mark and hands no formula to a spreadsheet', async () => {
	const { app } = await onDisk();
	const { name, content } = recordCsv(app, 'en');
	expect(name).toMatch(/^record-\d{4}-\d\d-\d\d\.csv$/);
	expect(content.charCodeAt(0)).toBe(0xfeff);
	expect(content).toContain("'=cmd|calc");
	expect(content).not.toMatch(/(^|[,\n"])=cmd/);
	await app.close();
});

describe('the check of the file', () => {
	test('reads the disk and finds it whole', async () => {
		const { app } = await onDisk();
		expect(await verifyFile(app, 'en')).toMatchObject({
			fault: null,
			agrees: true,
			whole: { count: app.journal.head.count, head: app.journal.head.hash }
		});
		await app.close();
	});

	test('names a line edited by hand while the program runs, and why', async () => {
		const { app, edit } = await onDisk();
		await edit((text) => text.replace('"demo":false', '"demo":true'));
		const { fault, agrees } = await verifyFile(app, 'en');
		expect(fault).toMatchObject({ line: 1, why: record.en.why['wrong-hash'] });
		expect(agrees).toBe(false);
		await app.close();
	});

	test('sees entries cut off the end while the program runs, and an unfinished line', async () => {
		const { app, edit } = await onDisk();
		await enter(app, { event: 'person.secret-set', data: { person: 'lead' } });
		await edit((text) => `${text.split('\n').slice(0, -2).join('\n')}\n{"torn`);
		expect(await verifyFile(app, 'en')).toMatchObject({ fault: null, agrees: false, torn: 6 });
		await app.close();
	});
});

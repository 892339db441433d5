import { describe, expect, it } from 'vitest';
import { DEMO_SHEETS, exportSheet, importSheet, sheetLimits, type DataSheet } from '$lib/engine';
import { found } from '$lib/server/found';
import { shopInForce } from '$lib/server/shop-in-force';
import { beginWithDemoSheets } from '$lib/server/shop/sheets/add-demo-sheets';
import { entriesOfSheet } from '$lib/server/shop/sheets/entries-of-sheet';
import { freeId } from '$lib/server/shop/sheets/free-id';
import { importFile } from '$lib/server/shop/sheets/import-file';
import { saveSheetForm } from '$lib/server/shop/sheets/save-sheet';
import { sheetFile } from '$lib/server/shop/sheets/sheet-file';
import { sheetFromForm } from '$lib/server/shop/sheets/sheet-from-form';
import { sheetPage } from '$lib/server/shop/sheets/sheet-page';
import { testApp } from '../test-app';
import { answered, demoShop, posted } from './in-the-shop';

const [A] = DEMO_SHEETS as [DataSheet];
const TODAY = '2026-03-02';
const filled = (sheet: DataSheet | null, lang: 'en' | 'es' = 'en', revision = 1) =>
	entriesOfSheet(sheet, { revision, today: TODAY, lang });
const READER = { lang: 'en', units: { system: 'metric' } } as const;

describe('the form of a sheet', () => {
	it.each(
		DEMO_SHEETS.flatMap((sheet) => [[sheet.id, 'en', sheet] as const, [sheet.id, 'es', sheet] as const])
	)('%s left as it is shown in %s is the same sheet', (_id, lang, sheet) => {
		expect(sheetFromForm(filled(sheet, lang), sheet.id, sheet, lang)).toEqual({ ok: true, sheet });
	});

	it('shows a Spanish reader a number with three decimals so that it is read back', () => {
		const sheet: DataSheet = {
			...A,
			lines: { ...A.lines, 'density-base': [{ ...A.lines['density-base']![0]!, value: 1.125 }] }
		};
		expect(sheetFromForm(filled(sheet, 'es'), A.id, sheet, 'es')).toEqual({ ok: true, sheet });
	});

	it('takes the unit that was typed before the one chosen, and converts the other number into it', () => {
		const entries = { ...filled(A), 'dry-film.min': '1 mil', 'dry-film.max': '38.1 µm' };
		const read = sheetFromForm(entries, A.id, A, 'en');
		expect(read.ok && read.sheet.lines['dry-film']!.at(-1)).toMatchObject({ unit: 'mil', min: 1, max: 1.5 });
	});

	it('keeps an old number until the first day of the new one, and corrects one whose day stays', () => {
		const later = { ...filled(A), 'pot-life.value': '2.5', 'pot-life.from': '2026-05-01' };
		const changed = sheetFromForm(later, A.id, A, 'en');
		if (!changed.ok) throw new Error(JSON.stringify(changed.problems));
		expect(changed.sheet.lines['pot-life']).toMatchObject([
			{ from: '2026-01-01', value: 3 },
			{ from: '2026-05-01', value: 2.5 }
		]);
		const corrected = sheetFromForm(
			{ ...filled(changed.sheet), 'pot-life.value': '2' },
			A.id,
			changed.sheet,
			'en'
		);
		expect(corrected.ok && corrected.sheet.lines['pot-life']).toMatchObject([{ value: 3 }, { value: 2 }]);
	});

	it('needs to know what was read, or that nobody has', () => {
		const silent = { ...filled(A), 'stir.read': '' };
		expect(sheetFromForm(silent, A.id, A, 'en')).toMatchObject({
			ok: false,
			problems: { 'stir.read': expect.stringContaining('read') }
		});
		const memory = sheetFromForm({ ...silent, 'stir.memory': 'yes' }, A.id, A, 'en');
		expect(memory.ok && memory.sheet.lines.stir![0]!.provenance).toEqual({
			origin: 'data-sheet',
			verification: 'memory'
		});
		const common = sheetFromForm({ ...silent, commonRead: 'sheet of 2026' }, A.id, A, 'en');
		expect(common.ok && common.sheet.lines.stir![0]!.provenance.verification).toEqual({
			read: 'sheet of 2026'
		});
		const both = { ...filled(A), 'stir.memory': 'yes' };
		expect(sheetFromForm(both, A.id, A, 'en')).toMatchObject({
			problems: { 'stir.read': expect.any(String) }
		});
	});

	it.each([
		[{ 'dry-film.max': 'many' }, 'dry-film.max'],
		[{ 'dry-film.max': '' }, 'dry-film.max'],
		[{ 'dry-film.max': '85 psi' }, 'dry-film.max'],
		[{ 'dry-film.min': '60' }, 'dry-film.max'],
		[{ 'dry-film.max': '4000' }, 'dry-film.max'],
		[{ 'dry-film.min': '', 'dry-film.max': '' }, 'line.dry-film'],
		[{ 'dry-film.unit': 'furlong' }, 'dry-film.unit'],
		[{ 'dry-film.from': 'soon' }, 'dry-film.from'],
		[{ 'dry-film.from': '2026-02-30' }, 'dry-film.from'],
		[{ commonFrom: '2026-02-30' }, 'commonFrom'],
		[{ 'coats.min': '1.5' }, 'coats.min'],
		[{ 'mix-ratio.value': '9:1' }, 'line.mix-ratio'],
		[{ title: ' ' }, 'title'],
		[{ family: 'Z' }, 'family'],
		[{ family: '__proto__' }, 'family'],
		[{ family: 'C' }, 'basis'],
		[{ family: 'C' }, 'line.mix-ratio'],
		[{ basis: 'none' }, 'basis'],
		[{ thinner: 'water' }, 'thinner'],
		[{ cup: '' }, 'cup'],
		[{ rubSolvent: '' }, 'rubSolvent'],
		[{ filled: '' }, 'filled'],
		[{ hazards: ['flammable', 'boredom'] }, 'hazards'],
		[{ hazards: ['flammable'] }, 'hazards'],
		[{ effective: '' }, 'effective'],
		[{ effective: '2025-12-31' }, 'effective']
	])('%j is a problem at “%s”', (change, at) => {
		for (const lang of ['en', 'es'] as const) {
			const read = sheetFromForm({ ...filled(A, lang), ...change }, A.id, A, lang);
			expect(read.ok).toBe(false);
			expect(!read.ok && Object.keys(read.problems)).toContain(at);
		}
	});
});

describe('saving a sheet', () => {
	it('enters a new one under an id made from its title', async () => {
		const { app } = await demoShop();
		const entries = { ...filled(A, 'en', 0), title: 'Añil satinado' };
		const { to } = await answered(saveSheetForm(posted(app, entries), null));
		expect(to).toBe('/en/shop/sheets/anil-satinado?done=saved');
		expect(shopInForce(app).shop.sheets['anil-satinado']).toMatchObject({
			title: 'Añil satinado',
			demo: false
		});
	});

	it('has a revision hold from its day on', async () => {
		const { app } = await demoShop();
		const entries = { ...filled(A), 'dry-film.max': '45', effective: '2026-03-10' };
		await answered(saveSheetForm(posted(app, entries), A.id));
		const film = (day: string) => sheetLimits(shopInForce(app, day).shop, A.id, 'dry-film')!.max;
		expect(film('2026-03-09')).toBeCloseTo(40e-6, 12);
		expect(film('2026-03-10')).toBeCloseTo(45e-6, 12);
		expect(sheetPage(app, A.id, null, READER)?.revision).toBe(1);
		expect(sheetPage(app, A.id, 2, READER)?.revision).toBe(2);
		expect(sheetPage(app, A.id, 3, READER)).toBeUndefined();
	});

	it('loses nobody’s revision that came in between, and keeps what was typed', async () => {
		const { app } = await demoShop();
		const mine = { ...filled(A), 'dry-film.max': '45' };
		await answered(saveSheetForm(posted(app, { ...filled(A), 'dry-film.max': '50' }), A.id));
		const { status, data } = await answered(saveSheetForm(posted(app, mine), A.id));
		expect(status).toBe(409);
		expect(data!.problems['']).toMatch(/meantime/);
		expect(data!.kept['dry-film.max']).toBe('45');
	});

	it('refuses a day in the past at its field, and a sheet that says nothing new', async () => {
		const { app } = await demoShop();
		const past = await answered(saveSheetForm(posted(app, { ...filled(A), effective: '2026-03-01' }), A.id));
		expect(past.data!.problems.effective).toMatch(/later day/);
		expect((await answered(saveSheetForm(posted(app, filled(A)), A.id))).status).toBe(409);
	});

	it('survives a form that no page of ours sent', async () => {
		const { app } = await demoShop();
		const before = app.journal.head.hash;
		const forms: Record<string, string | string[]>[] = [
			{},
			{ family: ['A', 'B'], hazards: Array<string>(500).fill('x') },
			{ title: '9'.repeat(1e5) }
		];
		for (const form of forms)
			expect((await answered(saveSheetForm(posted(app, form), null))).status).toBe(400);
		expect(app.journal.head.hash).toBe(before);
	});

	it('names every open choice and every needed line of an empty form at once, each at a field of its own', async () => {
		const { app } = await demoShop();
		const empty = { ...filled(null), family: 'A' };
		const { data } = await answered(saveSheetForm(posted(app, empty), null));
		const at = Object.keys(data!.problems);
		expect(at).toEqual(
			expect.arrayContaining(['title', 'basis', 'thinner', 'cup', 'filled', 'line.coats', 'line.pot-life'])
		);
		expect(at).not.toContain('line.thinner');
	});

	it('finds an id for any title', () => {
		expect(freeId('漆', new Set())).toBe('sheet');
		expect(freeId('Topcoat!', new Set(['topcoat', 'topcoat-2']))).toBe('topcoat-3');
	});
});

describe('a sheet as a file', () => {
	const text = (change: object = {}) => exportSheet({ ...A, id: 'ours', demo: false, ...change });

	it('goes out and comes in as the same sheet', async () => {
		const { app } = await demoShop();
		const { to } = await answered(importFile(posted(app, { text: text(), effective: TODAY })));
		expect(to).toBe('/en/shop/sheets/ours?done=saved');
		const file = sheetFile(app, 'ours', null)!;
		expect(file.name).toBe('ours-1.json');
		expect(importSheet(file.text)).toEqual(importSheet(text()));
	});

	it('becomes the next revision of the sheet it was sent to, and of no other', async () => {
		const { app } = await demoShop();
		const into = { sheet: A.id, basedOn: '1', effective: TODAY };
		const known = await answered(importFile(posted(app, { text: exportSheet(A), effective: TODAY })));
		expect(known.data!.listed).toMatchObject([{ path: 'id' }]);
		const other = await answered(importFile(posted(app, { ...into, text: text() })));
		expect(other.data!.listed).toMatchObject([{ path: 'id' }]);
		const renamed = exportSheet({ ...A, title: 'Demo A, renamed' });
		const { to } = await answered(importFile(posted(app, { ...into, text: renamed })));
		expect(to).toBe(`/en/shop/sheets/${A.id}?done=saved`);
		const stale = await answered(
			importFile(posted(app, { ...into, text: exportSheet({ ...A, title: 'B' }) }))
		);
		expect(stale.status).toBe(409);
	});

	it('is refused with every problem at its path, and the text kept', async () => {
		const { app } = await demoShop();
		const wrong = text({ family: 'Z', cup: 'mug' });
		const { data } = await answered(
			importFile(posted(app, { text: wrong, effective: TODAY }, { lang: 'es' }))
		);
		expect(data!.listed!.map(({ path }) => path)).toEqual(expect.arrayContaining(['family', 'cup']));
		expect(data!.kept.text).toBe(wrong);
	});

	it.each(['', '[', 'null', '{}', '{"format":"witness-panel/data-sheet@2"}', text({ title: '\ud800' })])(
		'%j is refused without an entry',
		async (file) => {
			const { app } = await demoShop();
			const before = app.journal.head.hash;
			expect((await answered(importFile(posted(app, { text: file, effective: TODAY })))).status).toBe(400);
			expect(app.journal.head.hash).toBe(before);
		}
	);
});

describe('the demo sheets', () => {
	it('come into a shop that has none, on being asked for, and only there', async () => {
		const { app } = await testApp();
		const founding = {
			lead: 'boss',
			leadName: 'Ana',
			shopName: 'Ours',
			timeZone: 'UTC',
			secret: 'x'
		} as const;
		await found(app, { ...founding, lang: 'en', demo: false });
		const asked = (form: Record<string, string>) =>
			answered(beginWithDemoSheets(posted(app, form, { person: 'boss' })));
		expect(app.journal.state.shop.sheets.size).toBe(0);
		expect((await asked({})).status).toBe(400);
		expect((await asked({ add: 'demo' })).to).toContain('done=demo');
		expect(Object.keys(shopInForce(app).shop.sheets)).toHaveLength(DEMO_SHEETS.length);
		expect((await asked({ add: 'demo' })).status).toBe(409);
	});
});

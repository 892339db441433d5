import { describe, expect, test } from 'vitest';
import airCured from '../../../../src/lib/engine/coatings/sheets/e-air-cured-film';
import catalysed from '../../../../src/lib/engine/coatings/sheets/f-catalysed-clear';
import highBake from '../../../../src/lib/engine/coatings/sheets/d-high-bake';
import { validateSheet } from '../../../../src/lib/engine/coatings/validate';
import { changed, revision } from './changed-sheet';

const problems = (input: unknown) => {
	const checked = validateSheet(input);
	return checked.ok ? [] : checked.problems;
};
const paths = (input: unknown) => problems(input).map(({ path }) => path);

test('a sound sheet comes back as it was', () => {
	expect(validateSheet(structuredClone(catalysed))).toEqual({ ok: true, sheet: catalysed });
});

describe('every problem stands at its field and is worded in both languages', () => {
	const film = (over: Record<string, unknown>) =>
		changed({}, { 'dry-film': [revision({ min: 15, max: 25, ...over })] });
	test.each([
		['not an object', [], ['']],
		['null', null, ['']],
		['no lines', { ...catalysed, lines: undefined }, ['lines']],
		['a missing field', changed({ cup: undefined }), ['cup']],
		['a field of the wrong type', changed({ filled: 'yes' }), ['filled']],
		['an id with spaces', changed({ id: 'Demo F' }), ['id']],
		['an empty title', changed({ title: '   ' }), ['title']],
		['a very long title', changed({ title: 'x'.repeat(10_000) }), ['title']],
		['an unknown family', changed({ family: 'Z' }), ['family']],
		['an unknown hazard', changed({ hazards: ['flammable', 'radioactive'] }), ['hazards.1']],
		['fields nobody reads', changed({ colour: 'red', price: 3 }), ['colour', 'price']],
		['a line nobody knows', changed({}, { 'dry-flim': [] }), ['lines.dry-flim']],
		['a line without entries', changed({}, { coats: [] }), ['lines.coats']],
		['a line that is no list', changed({}, { coats: 2 }), ['lines.coats']],
		['a unit of another quantity', film({ unit: 'psi' }), ['lines.dry-film.0.unit']],
		['a number as text', film({ max: '25' }), ['lines.dry-film.0.max']],
		['a number that is none', film({ max: NaN }), ['lines.dry-film.0.max']],
		['an endless number', film({ max: Infinity }), ['lines.dry-film.0.max']],
		['upside down', film({ min: 25, max: 15 }), ['lines.dry-film.0.max']],
		['a slipped unit', film({ unit: 'mm' }), ['lines.dry-film.0.min', 'lines.dry-film.0.max']],
		['below zero', film({ min: -1 }), ['lines.dry-film.0.min']],
		['a date of another fashion', film({ from: '01/02/2026' }), ['lines.dry-film.0.from']],
		['a day that does not exist', film({ from: '2026-02-30' }), ['lines.dry-film.0.from']],
		['an entry key nobody reads', film({ note: 'x' }), ['lines.dry-film.0.note']],
		[
			'an invented origin',
			film({ provenance: { origin: 'published', verification: 'memory' } }),
			['lines.dry-film.0.provenance.origin']
		],
		[
			'no word on what was read',
			film({ provenance: { origin: 'data-sheet' } }),
			['lines.dry-film.0.provenance.verification']
		],
		[
			'half a coat',
			changed({}, { coats: [revision({ unit: '', min: 1, max: 1.5 })] }),
			['lines.coats.0.max']
		],
		[
			'a single number for a window',
			changed({}, { 'dry-film': [revision({ value: 20 })] }),
			['lines.dry-film.0.value', 'lines.dry-film.0.min', 'lines.dry-film.0.max']
		],
		[
			'a window for a single number',
			changed({}, { 'solvent-rubs': [revision({ unit: '', min: 20, max: 50 })] }),
			['lines.solvent-rubs.0.min', 'lines.solvent-rubs.0.max', 'lines.solvent-rubs.0.value']
		],
		[
			'two entries from one day',
			changed({}, { 'dry-film': [revision({ min: 15, max: 25 }), revision({ min: 15, max: 24 })] }),
			['lines.dry-film.1.from']
		]
	])('%s', (_name, input, expected) => {
		const found = problems(input);
		expect(found.map(({ path }) => path).sort()).toEqual([...expected].sort());
		for (const { text } of found) {
			expect(text.en).not.toBe('');
			expect(text.es).not.toBe(text.en);
		}
	});

	test('an unknown unit is answered with the units the line takes', () => {
		const [problem] = problems(film({ unit: 'furlong' }));
		expect(problem!.text.en).toContain('µm, mm, cm, m, mil, in, ft');
		expect(problem!.text.es).toContain('µm, mm, cm, m, mil, in, ft');
	});

	test('a number without unit says to leave the unit empty', () => {
		const [problem] = problems(changed({}, { coats: [revision({ min: 1, max: 2 })] }));
		expect(problem).toMatchObject({
			path: 'lines.coats.0.unit',
			text: { en: expect.stringContaining('no unit') }
		});
	});

	test('a bound is named in the unit that was typed', () => {
		const [problem] = problems(changed({}, { 'pot-life-at': [revision({ unit: '°F', value: 300 })] }));
		expect(problem!.text.en).toContain('41 °F');
		expect(problem!.text.en).toContain('104 °F');
	});

	test('problems in several places are all named at once', () => {
		expect(
			paths(changed({ cup: 'tea' }, { coats: [], flash: [revision({ unit: 'min', min: 9, max: 3 })] })).sort()
		).toEqual(['cup', 'lines.coats', 'lines.flash.0.max']);
	});
});

describe('statements that do not agree', () => {
	test.each([
		['a required line is missing', changed({}, { humidity: undefined }), ['lines.humidity']],
		[
			'a two-part line is missing',
			changed({}, { 'mix-ratio-band': undefined, 'pot-life-at': undefined }),
			['lines.mix-ratio-band', 'lines.pot-life-at']
		],
		[
			'a required line starts after the sheet',
			changed({}, { humidity: [revision({ unit: '%', from: '2026-05-01', min: 40, max: 60 })] }),
			['lines.humidity.0.from']
		],
		[
			'the ratio is outside its band',
			changed({}, { 'mix-ratio': [revision({ unit: ':1', value: 10 })] }),
			['lines.mix-ratio']
		],
		[
			'a two-part family in one part',
			changed({ parts: 1, basis: null }),
			[
				'parts',
				'lines.mix-ratio',
				'lines.mix-ratio-band',
				'lines.density-base',
				'lines.density-hardener',
				'lines.stir',
				'lines.pot-life',
				'lines.pot-life-at',
				'lines.induction'
			]
		],
		['a mix without basis', changed({ basis: null }), ['basis']],
		['a thinner without a share', changed({}, { thinner: undefined }), ['lines.thinner']],
		['a share without a thinner', changed({ thinner: null }), ['thinner']],
		['a cup time without a cup', changed({ cup: null }), ['cup']],
		['rubs without a solvent', changed({ rubSolvent: null }), ['rubSolvent']],
		['a cure without its time', changed({}, { 'cure-metal-hold': undefined }), ['lines.cure-metal-hold']],
		['an oven film without flash', changed({}, { flash: undefined }), ['lines.flash']],
		[
			'a cure that makes fume',
			changed({}, { 'fume-above': [revision({ unit: '°C', value: 155 })] }),
			['lines.cure-metal-temperature']
		],
		['isocyanate not named', changed({ family: 'A' }), ['hazards']],
		['a hazard twice', changed({ hazards: ['flammable', 'flammable'] }), ['hazards']]
	])('%s', (_name, input, expected) => {
		expect(paths(input).sort()).toEqual([...expected].sort());
	});

	test('a fume warning needs its temperature', () => {
		const lines = Object.fromEntries(
			Object.entries(highBake.lines).filter(([line]) => line !== 'fume-above')
		);
		expect(paths({ ...highBake, lines })).toEqual(['lines.fume-above']);
	});

	test('a ratio that leaves its band on a later day is found and the day named', () => {
		const later = [
			revision({ unit: ':1', value: 9 }),
			revision({ unit: ':1', from: '2026-06-01', value: 9.5 })
		];
		const [problem] = problems(changed({}, { 'mix-ratio': later }));
		expect(problem).toMatchObject({
			path: 'lines.mix-ratio',
			text: { en: expect.stringContaining('2026-06-01') }
		});
	});

	test('a film that only dries in air needs neither flash nor cure', () => {
		expect(validateSheet(airCured).ok).toBe(true);
	});
});

describe('hostile input', () => {
	test('a list of a million entries is refused without reading them', () => {
		expect(paths(changed({}, { coats: new Array(1_000_000).fill({}) }))).toEqual(['lines.coats']);
	});
	test('at most a hundred problems are listed', () => {
		const strange = Object.fromEntries(Array.from({ length: 5000 }, (_, index) => [`key-${index}`, 1]));
		expect(problems(changed(strange))).toHaveLength(100);
	});
	test.each(['__proto__', 'constructor', 'toString'])('a line called %s is an unknown line', (name) => {
		const input = JSON.parse(JSON.stringify(catalysed).replace('"lines":{', `"lines":{"${name}":[],`));
		expect(paths(input)).toEqual([`lines.${name}`]);
	});
});

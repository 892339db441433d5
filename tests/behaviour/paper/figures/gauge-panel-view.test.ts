import { render } from 'svelte/server';
import { describe, expect, test } from 'vitest';
import type { Figure } from '$lib/drills';
import { bar, celsius, fahrenheit, METRIC, micrometres, mils, psi, seconds, US } from '$lib/engine';
import { LANGS } from '$lib/i18n';
import { gaugePanelView } from '../../../../src/lib/paper/figures/gauge-panel-view';
import GaugePanel from '../../../../src/lib/ui/figures/GaugePanel.svelte';

type Panel = Extract<Figure, { kind: 'gauge-panel' }>;
type Instrument = Panel['instruments'][number];
type Dial = Extract<Instrument, { kind: 'dial' }>;

const view = (instrument: Instrument, lang: 'en' | 'es' = 'en', units = METRIC) =>
	gaugePanelView({ kind: 'gauge-panel', instruments: [instrument] }, { lang, units }).instruments[0]!;

const dial = (
	unit: string,
	to: number,
	numbered: number,
	division: number,
	value: number,
	from = 0
): Dial => ({
	kind: 'dial',
	shows: unit.startsWith('°') ? 'air' : 'blast-pressure',
	dimension: unit.startsWith('°') ? 'temperature' : 'pressure',
	scale: { unit, from, to, numbered, division },
	value
});

const DIALS: readonly (readonly [Dial, number])[] = [
	[dial('psi', 160, 20, 4, psi(66)), 66],
	[dial('psi', 60, 10, 1, psi(40)), 40],
	[dial('psi', 15, 5, 0.5, psi(8.125)), 8.125],
	[dial('bar', 11, 1, 0.2, bar(2.95)), 2.95],
	[dial('bar', 4, 1, 0.1, bar(3.025)), 3.025],
	[dial('bar', 1, 0.2, 0.02, bar(0.585)), 0.585],
	[dial('°C', 50, 10, 1, celsius(23)), 23],
	[dial('°F', 120, 20, 2, fahrenheit(74), 20), 74]
];

const QUARTERS: Record<string, number> = { '': 0, '¼': 0.25, '½': 0.5, '¾': 0.75 };

/** What a person works out who only hears the words. */
function heard(words: string): number {
	const division = Number(
		/(?:one small division is|una división pequeña es) ([\d.]+?)\.(?: |$)/.exec(words)![1]
	);
	const past = /(?:is|está) (\d*)([¼½¾]?) .*?(?:past|después de) ([\d.]+?)\.$/.exec(words);
	const on = /(?:is on|está en) ([\d.]+?)\.$/.exec(words);
	if (on) return Number(on[1]);
	return Number(past![3]) + (Number(past![1]) + QUARTERS[past![2]!]!) * division;
}

describe('a dial', () => {
	test.each(DIALS)('has its pointer where its value is on the scale, %#', (instrument, shown) => {
		const drawn = view(instrument);
		if (drawn.kind !== 'dial') throw new Error('no dial');
		const { from, to, numbered, division } = instrument.scale;
		const { ticks, numbers, pointer } = drawn.face;
		// two numbers of the face fix the scale; the pointer is read against them
		const [first, last] = [numbers[0]!, numbers.at(-1)!];
		const perDegree = (Number(last.text) - Number(first.text)) / (last.at - first.at);
		expect(Number(first.text) + (pointer - first.at) * perDegree).toBeCloseTo(shown, 6);
		expect([Number(first.text), Number(last.text)]).toEqual([
			from,
			from + Math.floor((to - from) / numbered) * numbered
		]);
		expect(ticks).toHaveLength(Math.round((to - from) / division) + 1);
		expect(ticks.filter(({ rank }) => rank === 'number')).toHaveLength(numbers.length);
		expect(Math.abs(pointer)).toBeLessThanOrEqual(135);
	});

	test.each(DIALS)('says in words what is drawn, %#', (instrument, shown) => {
		for (const lang of LANGS) expect(heard(view(instrument, lang).inWords)).toBeCloseTo(shown, 6);
	});

	test('is marked in one unit, its own, whatever the reader is used to', () => {
		const instrument = DIALS[0]![0];
		for (const units of [METRIC, US]) {
			const drawn = view(instrument, 'en', units);
			expect(drawn.unit).toBe('psi');
			expect(JSON.stringify(drawn)).not.toContain('bar');
		}
	});

	test('is read from its words as from its face: they do not say the number', () => {
		expect(view(DIALS[0]![0]).inWords).toBe(
			'Dial marked in psi, from 0 to 160. Numbered every 20; one small division is 4. The pointer is 1½ small divisions past 60.'
		);
		expect(view(DIALS[3]![0], 'es').inWords).toMatch(/La aguja está 4¾ divisiones pequeñas después de 2\.$/);
	});
});

describe('a stopwatch', () => {
	const watch = (value: number, lang: 'en' | 'es' = 'en') => {
		const drawn = view({ kind: 'stopwatch', shows: 'cup-time', value: seconds(value) }, lang);
		if (drawn.kind !== 'stopwatch') throw new Error('no stopwatch');
		return drawn;
	};

	test('goes round once a minute and counts the minutes apart', () => {
		const { face, minutes, inWords } = watch(84.75);
		expect((face.pointer / 360) * 60).toBeCloseTo(24.75, 6);
		expect((minutes.pointer / 360) * 15).toBeCloseTo(84.75 / 60, 6);
		expect(inWords).toContain('4¾ small divisions past 20.');
		expect(inWords).toContain('between 1 and 2.');
		expect(watch(24.75).face.pointer).toBeCloseTo(face.pointer, 6);
		expect(watch(24.75, 'es').inWords).toContain('entre 0 y 1.');
	});

	test('prints 60 and not 0 at the top', () => {
		expect(watch(30).face.numbers.map(({ text }) => text)).toEqual([
			'5',
			'10',
			'15',
			'20',
			'25',
			'30',
			'35',
			'40',
			'45',
			'50',
			'55',
			'60'
		]);
	});
});

describe('a display', () => {
	const display = (unit: 's' | 'min:s' | 'mil' | 'µm', decimals: number, value: number) =>
		view({
			kind: 'digital',
			...(unit === 's' || unit === 'min:s'
				? { shows: 'cup-time' as const, dimension: 'duration' as const }
				: { shows: 'spot' as const, dimension: 'length' as const }),
			unit,
			decimals,
			value
		});

	test('shows its digits, those behind the point too, and the unit', () => {
		expect(display('mil', 2, mils(1.2))).toMatchObject({ shown: '1.20', unit: 'mil' });
		expect(display('µm', 1, micrometres(28))).toMatchObject({ shown: '28.0', unit: 'µm' });
		expect(display('s', 1, seconds(27.4))).toMatchObject({ shown: '27.4', unit: 's' });
		expect(display('min:s', 0, seconds(87))).toMatchObject({ shown: '1:27', unit: 'min:s' });
		expect(display('min:s', 0, seconds(7))).toMatchObject({ shown: '0:07' });
	});
});

describe('the panel', () => {
	const drawn = (instruments: readonly Instrument[], lang: 'en' | 'es' = 'en') =>
		render(GaugePanel, {
			props: { view: gaugePanelView({ kind: 'gauge-panel', instruments }, { lang, units: METRIC }), lang }
		}).body;

	test('says that the air is read now and the ticket’s was not', () => {
		expect(drawn([DIALS[6]![0]])).toContain('The air on the ticket was read this morning');
		expect(drawn([DIALS[6]![0]], 'es')).toContain('El aire de la orden se leyó en la mañana');
		expect(drawn([DIALS[0]![0]])).not.toContain('this morning');
	});

	test('gives every drawing its words, for who hears and for who reads them', () => {
		const body = drawn([DIALS[0]![0], { kind: 'stopwatch', shows: 'cup-time', value: 30 }]);
		expect(body.match(/role="img" aria-label="[^"]{40,}"/g)).toHaveLength(2);
		expect(body.match(/1½ small divisions past 60/g)).toHaveLength(2);
	});
});

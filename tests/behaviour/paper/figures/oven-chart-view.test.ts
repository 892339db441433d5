import type { Component } from 'svelte';
import { render } from 'svelte/server';
import { describe, expect, test } from 'vitest';
import { makeTicket } from '$lib/drills';
import { celsius, fahrenheit, METRIC, rightAnswers, solve, US, windowOf, type FieldId } from '$lib/engine';
import { ovenChart } from '$lib/i18n';
import type { OvenChart as Chart } from '../../../../src/lib/drills/figures/oven-chart';
import kind from '../../../../src/lib/drills/kinds/read-the-oven-chart';
import { seeded } from '../../../../src/lib/drills/random';
import { axis } from '../../../../src/lib/paper/figures/chart-axis';
import { ovenChartView } from '../../../../src/lib/paper/figures/oven-chart-view';
import OvenChart from '../../../../src/lib/ui/figures/OvenChart.svelte';
import { demoShop } from '../../drills/shop';

const shop = demoShop();
const reader = { lang: 'en', units: METRIC } as const;

const drills = Array.from({ length: 140 }, (_, seed) => seed).flatMap((seed) => {
	const { job } = makeTicket({ seed, breadth: ((seed % 3) + 1) as 1 | 2 | 3, shop })!;
	const plan = solve(job, shop);
	const ready =
		plan.decision === 'accept' && kind.needs.every((id) => plan.fields.some((one) => one.field === id));
	const made = ready ? kind.make({ job, plan, shop }, seeded(seed)) : undefined;
	const [figure] = made?.steps[0]?.figures ?? [];
	if (!made || figure?.kind !== 'oven-chart') return [];
	const windowOn = (id: FieldId) => windowOf(plan.fields.find((one) => one.field === id)!.demands);
	return [{ figure, made, plan, cure: windowOn('cure-temperature'), hold: windowOn('cure-hold') }];
});

const kelvins = (shown: string, unit: string) => (unit === '°F' ? fahrenheit : celsius)(Number(shown));

/** What somebody finds who has only the table, taking the way between two rows as straight. */
function readTable({ figure, cure }: (typeof drills)[number]) {
	const { rows } = ovenChartView(figure, reader).table;
	const read = rows.map(({ time, readings, door }) => {
		const [heaviest, thinnest] = readings.map((one): number => kelvins(one, figure.unit)) as [number, number];
		return {
			at: Number(time) * 60,
			cooler: Math.min(heaviest, thinnest),
			hotter: Math.max(heaviest, thinnest),
			door
		};
	});
	const unloaded = read.findLastIndex(({ door }) => door === 'shut') + 1;
	const until = read.slice(0, unloaded + 1);
	const crossing = (one: (typeof read)[number], other: (typeof read)[number]) =>
		one.at + ((cure.min - one.cooler) / (other.cooler - one.cooler)) * (other.at - one.at);
	const first = until.findIndex(({ cooler }) => cooler >= cure.min);
	const last = until.findLastIndex(({ cooler }) => cooler >= cure.min);
	let inside = 0;
	for (let at = 1; at < until.length; at += 1) {
		const [one, other] = [until[at - 1]!, until[at]!];
		const [from, to] = [one.cooler >= cure.min, other.cooler >= cure.min];
		if (from && to) inside += other.at - one.at;
		else if (to) inside += other.at - crossing(one, other);
		else if (from) inside += crossing(one, other) - one.at;
	}
	return {
		starts: first > 0 ? crossing(until[first - 1]!, until[first]!) : undefined,
		ends: last >= 0 && last < until.length - 1 ? crossing(until[last]!, until[last + 1]!) : until.at(-1)!.at,
		inside,
		hottest: Math.max(...read.map(({ hotter }) => hotter))
	};
}

const quantity = (fields: ReturnType<typeof rightAnswers>, id: FieldId) => {
	const answer = fields[id];
	return answer?.kind === 'quantity' ? answer.value : undefined;
};

describe('the table', () => {
	test('gives the times of the chart within what a reading may be off, and the same verdict', () => {
		expect(drills.length).toBeGreaterThan(20);
		for (const one of drills) {
			const { figure, made, plan, cure, hold } = one;
			const right = rightAnswers({ ...plan, fields: made.fields });
			const { starts, ends, inside, hottest } = readTable(one);
			const allowed = Math.max(figure.division, 120);
			const [soakStarts, soakEnds] = [quantity(right, 'soak-starts'), quantity(right, 'soak-ends')];
			if (soakStarts !== undefined) expect(Math.abs(starts! - soakStarts)).toBeLessThan(allowed / 2);
			if (soakEnds !== undefined) expect(Math.abs(ends - soakEnds)).toBeLessThan(allowed);
			const hot = hottest > cure.max + 0.5 || inside > hold.max + allowed;
			const verdict = hot ? 'long-hot' : inside < hold.min - allowed ? 'short-cold' : 'accept';
			expect(right['chart-verdict']).toEqual({ kind: 'choice', option: verdict });
		}
	});

	test('is as fine as the divisions of the chart and stays short enough to listen to', () => {
		for (const { figure } of drills) {
			const { rows } = ovenChartView(figure, reader).table;
			expect(Number(rows[1]!.time) * 60).toBeLessThanOrEqual(figure.division);
			expect(rows.length).toBeLessThanOrEqual(64);
		}
	});
});

describe('the lines', () => {
	const made: Chart = {
		kind: 'oven-chart',
		unit: '°F',
		every: 60,
		division: 120,
		air: [fahrenheit(200), fahrenheit(340), fahrenheit(340), fahrenheit(200)],
		heaviest: [fahrenheit(70), fahrenheit(150), fahrenheit(250), fahrenheit(240)],
		thinnest: [fahrenheit(70), fahrenheit(250), fahrenheit(330), fahrenheit(220)],
		doorOpen: [{ from: 120, to: 180 }]
	};

	test('lie where their numbers say, in the unit of the oven whatever the reader’s', () => {
		for (const units of [METRIC, US]) {
			const view = ovenChartView(made, { lang: 'en', units });
			expect(view.temperatureTitle).toContain('°F');
			const heaviest = view.traces.find(({ id }) => id === 'heaviest')!.points;
			const at = (label: string) => view.temperature.numbered.find((one) => one.label === label)!.at;
			expect(heaviest[2]![1]).toBeCloseTo(at('250'), 6);
			expect(heaviest[1]![1]).toBeCloseTo(at('150'), 6);
			expect(view.doorOpen[0]!.from).toBeCloseTo(heaviest[2]![0], 6);
			expect(view.table.rows[1]).toEqual({ time: '2', readings: ['250.0', '330.0', '340.0'], door: 'open' });
		}
	});

	test('stay on the paper', () => {
		for (const { figure } of drills) {
			const view = ovenChartView(figure, reader);
			for (const [across, up] of view.traces.flatMap(({ points }) => points)) {
				expect(Math.min(across, up)).toBeGreaterThanOrEqual(-1e-9);
				expect(Math.max(across, up)).toBeLessThanOrEqual(1 + 1e-9);
			}
		}
	});

	test('are ruled finely enough to read, and not finer than can be told apart', () => {
		for (const { figure } of drills) {
			const view = ovenChartView(figure, reader);
			for (const { small, numbered } of [view.time, view.temperature]) {
				expect(small.length).toBeLessThanOrEqual(66);
				expect(numbered.length).toBeGreaterThanOrEqual(3);
				expect(numbered.length).toBeLessThanOrEqual(14);
			}
		}
	});
});

test('an axis begins and ends on a division and numbers round values', () => {
	const { from, to, small, numbered } = axis(63, 118, { division: 5, numbered: 20 });
	expect([from, to, small.length]).toEqual([60, 120, 13]);
	expect(numbered).toEqual([
		{ at: 0, number: 60 },
		{ at: 20 / 60, number: 80 },
		{ at: 40 / 60, number: 100 },
		{ at: 1, number: 120 }
	]);
});

describe.each(['en', 'es'] as const)('the chart on a page, %s', (lang) => {
	const { figure, cure } = drills[0]!;
	const view = ovenChartView(figure, { lang, units: METRIC });
	const html = render(OvenChart as unknown as Component, { props: { view, lang } as never }).body;

	test('names its places and lines in words, and has every reading in the table', () => {
		for (const { label, line } of view.traces) {
			expect(html).toContain(label);
			expect(html).toContain(line);
		}
		expect(html.match(/<tr/g)).toHaveLength(view.table.rows.length + 1);
		for (const reading of view.table.rows[5]!.readings) expect(html).toContain(`>${reading}<`);
		expect(html).toContain(ovenChart[lang].demo);
	});

	test('draws no window: nobody is told where the limits are', () => {
		expect(Object.keys(figure).toSorted()).toEqual(
			['air', 'division', 'doorOpen', 'every', 'heaviest', 'kind', 'thinnest', 'unit'].toSorted()
		);
		expect(JSON.stringify(view)).not.toContain(String(cure.min));
		expect(html.match(/<polyline/g)).toHaveLength(3);
		expect(html.match(/<rect/g)).toHaveLength(figure.doorOpen.length);
	});
});

import { expect, test } from 'vitest';
import {
	grade,
	METRIC,
	rightAnswers,
	solve,
	US,
	type Expectation,
	type FieldId,
	type Plan
} from '$lib/engine';
import { cubicMetresPerHour } from '../../../src/lib/engine/units/construct';
import { derivationsOf, findingView } from '$lib/paper';
import { job, shop } from '../engine/rules/bench';

const plan = solve(
	job({
		bench: { compressor: cubicMetresPerHour(60), nozzles: ['bore-4-8', 'bore-9-5'] }
	}),
	shop
);
const expectationOf = ({ fields }: Plan, id: FieldId): Expectation =>
	fields.find(({ field }) => field === id)!.demands[0]!.expectation;
const metric = { lang: 'en', units: METRIC } as const;

test('a choice that numbers decide shows them, each with what it was made from', () => {
	const [delivery, widest, narrow] = derivationsOf(expectationOf(plan, 'blast-nozzle'), metric);
	expect(delivery).toMatchObject({ label: 'Free air the compressor delivers', value: '60\u00a0m³/h' });
	expect([widest!.label, narrow!.label]).toEqual([
		'Delivery needed for 9.5 mm (3/8 in)',
		'Delivery needed for 4.8 mm (3/16 in)'
	]);
	expect(widest!.formula).toContain('duty');
	expect(widest!.from!.map(({ value }) => value).slice(1)).toEqual(['70\u00a0%', '10\u00a0%', '20\u00a0%']);
	expect(widest!.from![0]!.from!.map(({ value }) => value)).toEqual([
		'9.52\u00a0mm',
		'5\u00a0bar',
		'78\u00a0%'
	]);
});

test('in the reader’s units', () => {
	const [delivery] = derivationsOf(expectationOf(plan, 'blast-nozzle'), { lang: 'es', units: US });
	expect(delivery).toMatchObject({ label: 'Aire libre que entrega el compresor', value: '35.3\u00a0cfm' });
});

test('a finding about such a choice carries them too', () => {
	const wrong = { ...rightAnswers(plan), 'blast-nozzle': { kind: 'choice', option: 'bore-9-5' } } as const;
	const found = grade(plan, wrong).breaches.find(({ rule }) => rule === 'nozzle-compressor-carries')!;
	const view = findingView(found, metric);
	expect(view.expected).toBe('4.8 mm (3/16 in)');
	expect(view.derivation!.from!.map(({ label }) => label)).toEqual([
		'Delivery needed for 9.5 mm (3/8 in)',
		'Delivery needed for 4.8 mm (3/16 in)'
	]);
});

test('a choice of plain knowledge has no numbers to show', () => {
	expect(derivationsOf(expectationOf(plan, 'handling-gloves'), metric)).toEqual([]);
});

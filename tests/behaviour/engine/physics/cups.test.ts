import { describe, expect, it } from 'vitest';
import { cupViscosity } from '../../../../src/lib/engine/physics/mixing/cup-viscosity';
import { seconds } from '../../../../src/lib/engine/units/construct';

const cups = Object.entries(cupViscosity);

describe.each(cups)('%s', (id, cup) => {
	const [from, to] = cup.validFor.time;

	it('reads thicker the longer it runs, over the whole of its range', () => {
		const steps = Array.from({ length: 21 }, (_, at) => from + (at * (to - from)) / 20);
		const thickness = steps.map((time) => cup.at({ time: seconds(time) }));
		expect(thickness[0]).toBeGreaterThan(0);
		expect(thickness.toSorted((a, b) => a - b)).toEqual(thickness);
	});

	it('is refused a second outside its range on either side', () => {
		expect(() => cup.at({ time: seconds(from - 1) })).toThrow(`viscosity-${id}: time = `);
		expect(() => cup.at({ time: seconds(to + 1) })).toThrow(`outside ${from} to ${to}`);
	});
});

it('are all of their series, each under its own name, the withdrawn one labelled', () => {
	expect(cups.map(([id]) => id)).toEqual([
		...[1, 2, 3, 4, 5].map((one) => `dip-cup-${one}`),
		...[1, 2, 3, 4, 5].map((one) => `ford-${one}`),
		...[3, 4, 5, 6].map((bore) => `iso-2431-${bore}mm`),
		'din-53211-4mm-withdrawn'
	]);
	for (const lang of ['en', 'es'] as const)
		expect(new Set(cups.map(([, { title }]) => title[lang])).size).toBe(cups.length);
	expect(cupViscosity['din-53211-4mm-withdrawn'].title.en).toContain('withdrawn');
});

it('of ISO would turn negative below their range, which is why they stop there', () => {
	expect(0.443 * 20 - 200 / 20).toBeLessThan(0);
	expect(() => cupViscosity['iso-2431-3mm'].at({ time: seconds(20) })).toThrow('outside');
});

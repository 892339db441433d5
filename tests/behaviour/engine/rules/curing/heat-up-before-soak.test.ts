import { describe, expect, test } from 'vitest';
import { limits } from '../../../../../src/lib/engine/rules/expectation';
import { situation } from '../../../../../src/lib/engine/plan/situation';
import rule from '../../../../../src/lib/engine/rules/curing/heat-up-before-soak';
import {
	celsius,
	degrees,
	millimetres,
	minutes,
	seconds
} from '../../../../../src/lib/engine/units/construct';
import { choice, job, part, quantity, shop } from '../bench';
import { ruleCases } from '../rule-cases';

/** Sheet F: 145 to 155 °C for metal, so air of 155 °C; parts of 21 °C. */
const LAST_DEGREES = Math.log((155 - 21) / (155 - 145));
const STEEL = 7830 * 450;

const polycarbonate = (wall: number) =>
	job({
		parts: [part({ material: 'polycarbonate', magnetSticks: false, thickness: millimetres(wall) })]
	});
const setTo = (
	id: 'cure.heat-transfer' | 'cure.heat-up-tolerance' | 'cure.air-above-middle',
	value: number
) => ({
	...shop,
	settings: { [id]: { from: '2026-01-01' as const, value } }
});
const estimate = (
	of: Parameters<typeof job>[0],
	in_: Parameters<typeof situation>[1] = shop
): { min: number; max: number } => limits(rule.expects(situation(job(of), in_)!))!;
const middle = (...given: Parameters<typeof estimate>) => {
	const { min, max } = estimate(...given);
	return (min + max) / 2;
};

ruleCases(
	rule,
	[
		{
			name: 'a steel plate of 3 mm takes about nine minutes, not one and not half an hour',
			job: job(),
			passes: [quantity(minutes(6)), quantity(minutes(9)), quantity(minutes(12))],
			fails: [
				[quantity(minutes(1)), 'low'],
				[quantity(minutes(30)), 'high'],
				[choice('part'), 'wrong']
			]
		},
		{
			name: 'the thick block of the load decides, not the thin cover',
			job: job({ parts: [part({ thickness: millimetres(1) }), part({ thickness: millimetres(20) })] }),
			passes: [quantity(minutes(60))],
			fails: [
				[quantity(minutes(3)), 'low'],
				[quantity(minutes(120)), 'high']
			]
		},
		{
			name: 'a shop that knows its oven allows less',
			job: job(),
			shop: setTo('cure.heat-up-tolerance', 0.1),
			passes: [quantity(minutes(9))],
			fails: [
				[quantity(minutes(7)), 'low'],
				[quantity(minutes(12)), 'high']
			]
		}
	],
	[
		job({ coating: 'demo-e-air-cured' }),
		job({ parts: [part(), part({ material: 'unknown' })] }),
		job({ writtenCap: celsius(145.5) }),
		job({ weather: { part: celsius(145) }, parts: [part()] }),
		job({ weather: { part: celsius(90) }, parts: [part({ material: 'polycarbonate' })] })
	]
);

describe('the estimate', () => {
	test('is the lumped heat-up of the wall in air above the middle of the window', () => {
		expect(middle({})).toBeCloseTo((STEEL * 0.0015 * LAST_DEGREES) / 25, 6);
		const { min, max } = estimate({});
		expect(max / min).toBeCloseTo(1.4 / 0.6, 9);
	});

	test('grows with the wall, and a bar counts like a wall of half its diameter', () => {
		const wall = (thickness: number, shape: 'plate' | 'bar' = 'plate') =>
			middle({ parts: [part({ shape, thickness: millimetres(thickness) })] });
		expect(wall(6)).toBeCloseTo(2 * wall(3), 6);
		expect(wall(12, 'bar')).toBeCloseTo(wall(6), 6);
	});

	test('is the slowest part’s wherever it stands on the ticket', () => {
		const thin = part({ thickness: millimetres(1) });
		const thick = part({ thickness: millimetres(8) });
		expect(middle({ parts: [thin, thick] })).toBe(middle({ parts: [thick] }));
		expect(middle({ parts: [thick, thin] })).toBe(middle({ parts: [thick] }));
		const plastic = part({ material: 'polycarbonate', thickness: millimetres(1) });
		expect(middle({ parts: [thick, plastic] })).not.toBe(middle({ parts: [plastic] }));
	});

	test('waits for the core of plastic: more than its heat content alone would say', () => {
		const { min, max } = limits(rule.expects(situation(polycarbonate(10), shop)!))!;
		const whole = ((1200 * 1200 * 0.005) / 25) * Math.log((90 - 21) / (90 - 80));
		expect((min + max) / 2).toBeGreaterThan(1.2 * whole);
		expect((min + max) / 2).toBeLessThan(1.8 * whole);
	});

	test('follows the oven of the shop', () => {
		expect(middle({}, setTo('cure.heat-transfer', 50))).toBeCloseTo(middle({}) / 2, 6);
		const air = middle({}, setTo('cure.air-above-middle', degrees(2)));
		expect(air).toBeCloseTo((STEEL * 0.0015 * Math.log((152 - 21) / (152 - 145))) / 25, 6);
	});

	test('never sets the air above the window or a part’s limit', () => {
		expect(middle({}, setTo('cure.air-above-middle', degrees(40)))).toBeCloseTo(middle({}), 9);
		const capped = middle({ writtenCap: celsius(148) });
		expect(capped).toBeCloseTo((STEEL * 0.0015 * Math.log((148 - 21) / (148 - 145))) / 25, 6);
	});

	test('is still made where the air is one degree above the target', () => {
		expect(rule.applies(situation(job({ writtenCap: celsius(146) }), shop)!)).toBe(true);
		expect(seconds(middle({ writtenCap: celsius(146) }))).toBeCloseTo(
			(STEEL * 0.0015 * Math.log(125)) / 25,
			3
		);
	});
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cupViscosity } from '../../../../src/lib/engine/physics/mixing/cup-viscosity';
import { hardenerError } from '../../../../src/lib/engine/physics/mixing/hardener-error';
import { mixSplit } from '../../../../src/lib/engine/physics/mixing/mix-split';
import { potLifeAt } from '../../../../src/lib/engine/physics/mixing/pot-life-at';
import { ratioByMass } from '../../../../src/lib/engine/physics/mixing/ratio-by-mass';
import { ratioError } from '../../../../src/lib/engine/physics/mixing/ratio-error';
import { sieveOpening } from '../../../../src/lib/engine/physics/mixing/sieve-opening';
import {
	celsius,
	count,
	gramsPerMillilitre,
	grams,
	hours,
	millilitres,
	ratio,
	seconds
} from '../../../../src/lib/engine/units/construct';

describe('mix split', () => {
	it('500 mL at 25:1 is 480.77 and 19.23 mL', () => {
		const mix = { batch: millilitres(500), ratio: ratio(25) };
		expect(mixSplit.volume.base.at(mix) * 1e6).toBeCloseTo(480.77, 2);
		expect(mixSplit.volume.hardener.at(mix) * 1e6).toBeCloseTo(19.23, 2);
	});

	it('makes the batch, at the ratio', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 0.01, max: 1, noNaN: true }),
				fc.double({ min: 0.1, max: 100, noNaN: true }),
				(batch, r) => {
					const mix = { batch: grams(batch * 1e3), ratio: ratio(r) };
					const [a, b] = [mixSplit.mass.base.at(mix), mixSplit.mass.hardener.at(mix)];
					expect(a + b).toBeCloseTo(batch, 12);
					expect(a / b / r).toBeCloseTo(1, 9);
				}
			)
		);
	});
});

it('4:1 by volume of 1.25 and 1.05 g/mL is 4.76:1 on a scale', () => {
	const parts = {
		byVolume: ratio(4),
		densityA: gramsPerMillilitre(1.25),
		densityB: gramsPerMillilitre(1.05)
	};
	expect(ratioByMass.at(parts)).toBeCloseTo(4.762, 3);
});

it('22 mL of hardener to 480 mL at 25:1 is 14.6 % too much of it', () => {
	const mix = { mixed: ratio(480 / 22), target: ratio(25) };
	expect(ratioError.at(mix)).toBeCloseTo(-0.1273, 4);
	expect(hardenerError.at(mix)).toBeCloseTo(0.1458, 4);
});

describe('pot life', () => {
	it.each([
		[13, 8],
		[23, 4],
		[33, 2],
		[43, 1]
	])('4 h at 23 °C is, at %d °C, %d h', (degrees, expected) => {
		const mix = { stated: hours(4), statedAt: celsius(23), mix: celsius(degrees) };
		expect(potLifeAt.at(mix) / 3600).toBeCloseTo(expected, 9);
	});

	it('is not worked out for an oven', () => {
		expect(() => potLifeAt.at({ stated: hours(4), statedAt: celsius(23), mix: celsius(150) })).toThrow(
			'outside'
		);
	});
});

describe('cups and sieves', () => {
	it.each([
		[30, 34.4],
		[40, 49.8],
		[60, 78.9],
		[100, 135]
	])('the 4 mm cup at %d s is %d mm²/s', (time, viscosity) => {
		expect(cupViscosity['iso-2431-4mm'].at({ time: seconds(time) }) * 1e6).toBeCloseTo(viscosity, 1);
	});

	it('refuse what lies outside the cup or the standard', () => {
		expect(() => cupViscosity['iso-2431-4mm'].at({ time: seconds(12) })).toThrow('outside');
		expect(() => sieveOpening.at({ number: count(180) })).toThrow('No. 180');
	});
});

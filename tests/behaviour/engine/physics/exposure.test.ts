import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { maximumUse } from '../../../../src/lib/engine/physics/exposure/maximum-use';
import { mixtureExposure } from '../../../../src/lib/engine/physics/exposure/mixture-exposure';
import { FACTORS, PROTECTION_FACTORS } from '../../../../src/lib/engine/physics/exposure/protection-factors';
import { smallestProtection } from '../../../../src/lib/engine/physics/exposure/smallest-protection';
import { timeWeightedAverage } from '../../../../src/lib/engine/physics/exposure/time-weighted-average';
import { count, hours } from '../../../../src/lib/engine/units/construct';
import type { Fraction, KilogramPerCubicMetre } from '../../../../src/lib/engine/units/dimension';

const ppm = (value: number) => (value / 1e6) as Fraction;
const milligrams = (value: number) => (value / 1e6) as KilogramPerCubicMetre;

describe('the average over eight hours', () => {
	it('of a whole shift at one concentration is that concentration', () => {
		const shift = { concentrations: [ppm(50)], durations: [hours(8)] };
		expect(timeWeightedAverage.share.at(shift)).toBeCloseTo(50e-6, 15);
		const weighed = { concentrations: [milligrams(50)], durations: [hours(8)] };
		expect(timeWeightedAverage.mass.at(weighed)).toBeCloseTo(50e-6, 15);
	});

	it('counts a long shift for more than its mean, a short one for less', () => {
		const at = (time: number) =>
			timeWeightedAverage.share.at({ concentrations: [ppm(50)], durations: [hours(time)] });
		expect(at(12)).toBeCloseTo(75e-6, 15);
		expect(at(2)).toBeCloseTo(12.5e-6, 15);
	});

	it('needs a time for every concentration', () => {
		expect(() =>
			timeWeightedAverage.mass.at({ concentrations: [milligrams(5)], durations: [hours(2), hours(1)] })
		).toThrow('time-weighted-average-mass: 1 concentrations do not pair with 2 durations');
	});
});

describe('a mixture', () => {
	it('at its very limit is not over it, however the sum is rounded', () => {
		const limits = [ppm(100), ppm(100), ppm(100)];
		const concentrations = [ppm(10), ppm(20), ppm(70)];
		expect(mixtureExposure.share.at({ concentrations, limits }).over).toBe(false);
		expect(mixtureExposure.share.at({ concentrations: [ppm(10), ppm(20), ppm(70.001)], limits }).over).toBe(
			true
		);
	});

	it('by weight counts the same', () => {
		const { sum, over } = mixtureExposure.mass.at({
			concentrations: [milligrams(0), milligrams(60)],
			limits: [milligrams(10), milligrams(40)]
		});
		expect(sum).toBeCloseTo(1.5, 12);
		expect(over).toBe(true);
	});

	it('needs a limit for every substance', () => {
		expect(() => mixtureExposure.share.at({ concentrations: [ppm(1), ppm(2)], limits: [ppm(1)] })).toThrow(
			'mixture-exposure-share: 2 concentrations do not pair with 1 limits'
		);
	});
});

describe('respirators', () => {
	it('have factors from 5 to 10 000', () => {
		expect(FACTORS).toEqual([5, 10, 25, 50, 1000, 10_000]);
	});

	it('of one facepiece are never worse with cleaner air', () => {
		const { 'air-purifying': filter, powered, 'supplied-pressure': pressure } = PROTECTION_FACTORS;
		expect(powered.factors.half).toBeGreaterThan(filter.factors.half);
		expect(pressure.factors.full).toBeGreaterThan(filter.factors.full);
	});

	it('stop at what is immediately dangerous', () => {
		const at = (limit: number) =>
			maximumUse.share.at({ protection: count(10), limit: ppm(limit), danger: ppm(500) });
		expect(at(200)).toBeCloseTo(500e-6, 15);
		expect(at(20)).toBeCloseTo(200e-6, 15);
		const dust = { protection: count(50), limit: milligrams(0.05), danger: milligrams(50) };
		expect(maximumUse.mass.at(dust)).toBeCloseTo(2.5e-6, 15);
	});

	const breathed = (concentration: number, danger = 500) =>
		smallestProtection.share.at({ concentration: ppm(concentration), limit: ppm(50), danger: ppm(danger) });

	it('are not demanded by a limit that is kept', () => {
		expect(breathed(50)).toMatchObject({ factor: 1, dangerous: false });
		expect(breathed(50).ratio).toBeCloseTo(1, 12);
		expect(breathed(0).factor).toBe(1);
	});

	it('suffice up to their factor and not beyond', () => {
		expect(breathed(51).factor).toBe(5);
		expect(breathed(250).factor).toBe(5);
		expect(breathed(251).factor).toBe(10);
		expect(breathed(499).factor).toBe(10);
	});

	it('are none of the table at and above the dangerous level', () => {
		expect(breathed(500)).toMatchObject({ factor: null, dangerous: true });
		expect(breathed(40, 30)).toMatchObject({ factor: null, dangerous: true });
	});

	it('are none beyond the greatest factor', () => {
		const at = (concentration: number) =>
			smallestProtection.mass.at({
				concentration: milligrams(concentration),
				limit: milligrams(0.01),
				danger: milligrams(1e5)
			});
		expect(at(100)).toMatchObject({ factor: 10_000, dangerous: false });
		expect(at(101)).toMatchObject({ factor: null, dangerous: false });
	});

	it('found for a concentration may be used in it', () => {
		fc.assert(
			fc.property(fc.double({ min: 51, max: 1999, noNaN: true }), (concentration) => {
				const air = { limit: ppm(50), danger: ppm(2000) };
				const { factor } = smallestProtection.share.at({ ...air, concentration: ppm(concentration) });
				const use = maximumUse.share.at({ ...air, protection: count(factor!) });
				expect(use * (1 + 1e-11)).toBeGreaterThanOrEqual(ppm(concentration));
			})
		);
	});
});

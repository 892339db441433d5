import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dilutionAir } from '../../../../src/lib/engine/physics/solvent/dilution-air';
import { dilutionFlow } from '../../../../src/lib/engine/physics/solvent/dilution-flow';
import { explosionReliefArea } from '../../../../src/lib/engine/physics/solvent/explosion-relief-area';
import { mixtureExplosiveLimit } from '../../../../src/lib/engine/physics/solvent/mixture-explosive-limit';
import { ovenAir } from '../../../../src/lib/engine/physics/solvent/oven-air';
import { purge } from '../../../../src/lib/engine/physics/solvent/purge';
import { vapourConcentration } from '../../../../src/lib/engine/physics/exposure/vapour-concentration';
import { vapourConcentrationAt } from '../../../../src/lib/engine/physics/exposure/vapour-concentration-at';
import { vapourVolume } from '../../../../src/lib/engine/physics/solvent/vapour-volume';
import { lowestLimit } from '../../../../src/lib/engine/solvents/lowest-limit';
import { SOLVENTS, SOLVENT_SOURCES, type Solvent } from '../../../../src/lib/engine/solvents/solvents';
import {
	celsius,
	cubicMetres,
	fahrenheit,
	fraction,
	gramsPerMillilitre,
	gramsPerMole,
	hours,
	litres,
	pascal,
	percent,
	ratio
} from '../../../../src/lib/engine/units/construct';
import type { CubicMetrePerSecond } from '../../../../src/lib/engine/units/dimension';

const TOLUENE = { density: gramsPerMillilitre(0.867), molarMass: gramsPerMole(92.14) };
const flow = (value: number) => value as CubicMetrePerSecond;

describe('mixed vapours', () => {
	it('of one limit have that limit, in any amounts', () => {
		const limits = [percent(1.2), percent(1.2)];
		const shares = [fraction(0.2), fraction(0.7)];
		expect(mixtureExplosiveLimit.at({ shares, limits })).toBeCloseTo(0.012, 12);
	});

	it('have a limit between those of their parts, whatever the scale of the shares', () => {
		const limits = [percent(1), percent(2.5)];
		const at = (one: number, other: number) =>
			mixtureExplosiveLimit.at({ shares: [fraction(one), fraction(other)], limits });
		expect(at(0.5, 0.5)).toBeCloseTo(1 / 70, 12);
		expect(at(0.01, 0.01)).toBeCloseTo(at(0.5, 0.5), 12);
		expect(at(1, 0)).toBeCloseTo(0.01, 12);
		expect(at(0, 1)).toBeCloseTo(0.025, 12);
	});

	it('need shares that pair with limits and are not all zero', () => {
		const limits = [percent(1), percent(2)];
		expect(() => mixtureExplosiveLimit.at({ shares: [fraction(1)], limits })).toThrow(
			'mixture-explosive-limit: 1 shares do not pair with 2 limits'
		);
		expect(() => mixtureExplosiveLimit.at({ shares: [fraction(0), fraction(0)], limits })).toThrow(
			'mixture-explosive-limit: shares hold no vapour at all'
		);
	});
});

describe('vapour by share and by weight', () => {
	const air = { molarMass: gramsPerMole(58.08), gas: celsius(25), barometer: pascal(101_325) };

	it('undo each other in any air', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 1e-6, max: 0.1, noNaN: true }),
				fc.double({ min: 0, max: 100, noNaN: true }),
				fc.double({ min: 60_000, max: 110_000, noNaN: true }),
				(share, degrees, barometer) => {
					const here = { ...air, gas: celsius(degrees), barometer: pascal(barometer) };
					const concentration = vapourConcentrationAt.mass.at({ ...here, share: fraction(share) });
					expect(vapourConcentrationAt.share.at({ ...here, concentration }) / share).toBeCloseTo(1, 12);
				}
			)
		);
	});

	it('agree with the limits’ own conversion at 25 °C and one atmosphere', () => {
		const share = fraction(1e-4);
		expect(vapourConcentrationAt.mass.at({ ...air, share })).toBeCloseTo(
			vapourConcentration.at({ share, molarMass: air.molarMass }),
			12
		);
	});
});

describe('air for the oven', () => {
	const load = { ...TOLUENE, limit: percent(1.1), share: fraction(0.25) };

	it('is the dilution of the vapour at 70 °F while the oven is below the hot limit', () => {
		const liquid = litres(1);
		const vapour = vapourVolume.at({ ...TOLUENE, liquid, gas: fahrenheit(70) });
		for (const gas of [celsius(20), fahrenheit(250)])
			expect(ovenAir.amount.at({ ...load, liquid, gas })).toBeCloseTo(
				dilutionAir.at({ vapour, limit: load.limit, share: load.share }),
				9
			);
	});

	it('rises by the hot factor in a hot oven, and the other way with the share', () => {
		const at = (degrees: number, share: number) =>
			ovenAir.amount.at({ ...load, liquid: litres(1), gas: celsius(degrees), share: fraction(share) });
		expect(at(150, 0.25) / at(20, 0.25)).toBeCloseTo((1 - 0.0077) / (0.7 * (1 - 0.011)), 12);
		expect(at(20, 0.1) / at(20, 0.25)).toBeCloseTo(2.5, 12);
	});

	it('per second needs what an amount needs, per second', () => {
		const gas = celsius(150);
		expect(ovenAir.rate.at({ ...load, gas, liquid: flow(1e-6) })).toBeCloseTo(
			ovenAir.amount.at({ ...load, gas, liquid: cubicMetres(1e-6) }),
			12
		);
	});

	it('takes at most half the limit, what a controlled oven may come to', () => {
		const at = (share: number) =>
			ovenAir.amount.at({ ...load, liquid: litres(1), gas: celsius(20), share: fraction(share) });
		expect(at(0.5)).toBeGreaterThan(0);
		expect(() => at(0.51)).toThrow('oven-air: share = 0.51 is outside');
	});
});

it('fifteen feet of oven behind every panel of relief', () => {
	expect(explosionReliefArea.at({ oven: cubicMetres(4.572) })).toBeCloseTo(1, 12);
});

describe('diluting what evaporates', () => {
	const room = { ...TOLUENE, gas: celsius(20), allowed: fraction(1e-4), mixing: ratio(1) };

	it('is the vapour over its permitted share, K times', () => {
		const vapour = vapourVolume.at({ ...TOLUENE, liquid: cubicMetres(1e-6), gas: celsius(20) });
		const air = dilutionFlow.at({ ...room, evaporation: flow(1e-6) });
		expect(air).toBeCloseTo(vapour / 1e-4, 12);
		expect(dilutionFlow.at({ ...room, evaporation: flow(1e-6), mixing: ratio(5) })).toBeCloseTo(5 * air, 12);
	});
});

describe('clearing the air', () => {
	const room = { space: cubicMetres(60), flow: flow(0.1), mixing: ratio(3) };

	it('takes no time to leave everything, and a change of air per e-fold', () => {
		expect(purge.time.at({ ...room, remaining: fraction(1) })).toBeCloseTo(0, 12);
		expect(purge.time.at({ ...room, remaining: fraction(1 / Math.E) })).toBeCloseTo((3 * 60) / 0.1, 9);
		expect(purge.remaining.at({ ...room, spent: hours(0) })).toBe(1);
	});

	it('read forwards and backwards is the same', () => {
		fc.assert(
			fc.property(fc.double({ min: 1e-5, max: 1, noNaN: true }), (remaining) => {
				const spent = purge.time.at({ ...room, remaining: fraction(remaining) });
				expect(purge.remaining.at({ ...room, spent }) / remaining).toBeCloseTo(1, 9);
			})
		);
	});
});

describe('solvents', () => {
	const all: readonly (readonly [string, Solvent])[] = Object.entries(SOLVENTS);

	it.each(all)('%s can exist', (_, { density, molarMass, nfpa, iec, osha, niosh, cas, name }) => {
		expect(density).toBeGreaterThan(700);
		expect(density).toBeLessThan(1000);
		expect(molarMass).toBeGreaterThan(0.05);
		expect(molarMass).toBeLessThan(0.12);
		for (const { limit, flash } of nfpa ? [nfpa, iec] : [iec]) {
			expect(limit).toBeGreaterThan(0.008);
			expect(limit).toBeLessThan(0.03);
			expect(flash).toBeGreaterThan(celsius(-25));
			expect(flash).toBeLessThan(celsius(30));
			// NIOSH never lets the dangerous level pass a third of what burns; most are at a tenth.
			expect(niosh.dangerous).toBeLessThan(limit / 3);
		}
		expect(niosh.average).toBeLessThanOrEqual(osha.average);
		expect(niosh.dangerous).toBeGreaterThan(osha.average);
		expect(name.es).not.toBe(name.en);
		// The last digit of a CAS number is a sum over the others.
		const digits = cas.replaceAll('-', '').split('').map(Number).reverse();
		expect(digits.slice(1).reduce((sum, digit, place) => sum + digit * (place + 1), 0) % 10).toBe(digits[0]);
	});

	it('are reckoned with by the lowest of their limits, and the list it is from', () => {
		expect(lowestLimit(SOLVENTS.toluene)).toEqual({ limit: percent(1), provenance: SOLVENT_SOURCES.iec });
		expect(lowestLimit(SOLVENTS['butyl-acetate'])).toEqual({
			limit: percent(1.2),
			provenance: SOLVENT_SOURCES.iec
		});
		expect(lowestLimit(SOLVENTS.mek)).toEqual({ limit: percent(1.4), provenance: SOLVENT_SOURCES.nfpa });
		expect(lowestLimit(SOLVENTS.acetone)).toEqual({ limit: percent(2.5), provenance: SOLVENT_SOURCES.iec });
		expect(lowestLimit(SOLVENTS.mibk)).toEqual({ limit: percent(1.2), provenance: SOLVENT_SOURCES.iec });
	});
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { absoluteHumidity } from '../../../../src/lib/engine/physics/humidity/absolute-humidity';
import { dewPoint } from '../../../../src/lib/engine/physics/humidity/dew-point';
import { dewPointMargin } from '../../../../src/lib/engine/physics/humidity/dew-point-margin';
import { highestHumidity } from '../../../../src/lib/engine/physics/humidity/highest-humidity';
import { humidityFromDewPoint } from '../../../../src/lib/engine/physics/humidity/humidity-from-dew-point';
import { humidityFromWetBulb } from '../../../../src/lib/engine/physics/humidity/humidity-from-wet-bulb';
import { celsius, degrees, fraction, kelvin, pascal } from '../../../../src/lib/engine/units/construct';

const SEA_LEVEL = pascal(101_325);
const shopAir = fc.double({ min: 5, max: 45, noNaN: true }).map(celsius);
const humid = fc.double({ min: 0.05, max: 1, noNaN: true }).map(fraction);

describe('humidity from the dew point', () => {
	it('is the dew point read backwards', () => {
		fc.assert(
			fc.property(shopAir, humid, (air, humidity) => {
				const dew = dewPoint.at({ air, humidity });
				// Rounding may put the dew point of saturated air in the last bit above the air.
				fc.pre(dew <= air);
				expect(humidityFromDewPoint.at({ air, dew })).toBeCloseTo(humidity, 9);
			})
		);
	});

	it('refuses air colder than its dew point, and takes air at it as saturated', () => {
		const air = celsius(20);
		expect(humidityFromDewPoint.at({ air, dew: air })).toBe(1);
		expect(() => humidityFromDewPoint.at({ air, dew: celsius(20.01) })).toThrow(
			/humidity-from-dew-point: dew = 293\.1\d+ K must not be above air = 293\.15 K/
		);
	});
});

describe('humidity from the wet bulb', () => {
	it('is 1 where both thermometers agree, at any barometer', () => {
		for (const barometer of [60_000, 101_325, 110_000].map(pascal))
			for (const air of [0.01, 20, 60].map(celsius))
				expect(humidityFromWetBulb.at({ air, wet: air, barometer })).toBeCloseTo(1, 12);
	});

	it('falls with the wet thermometer and rises on a mountain', () => {
		const at = (wet: number, barometer = 101_325) =>
			humidityFromWetBulb.at({ air: celsius(30), wet: celsius(wet), barometer: pascal(barometer) });
		expect(at(24)).toBeGreaterThan(at(22));
		expect(at(22)).toBeGreaterThan(at(15));
		expect(at(22, 80_000)).toBeGreaterThan(at(22));
	});

	it('refuses a wet thermometer above the dry one', () => {
		expect(() =>
			humidityFromWetBulb.at({ air: celsius(20), wet: celsius(21), barometer: SEA_LEVEL })
		).toThrow('humidity-from-wet-bulb: wet = 294.15 K must not be above air = 293.15 K');
	});

	it('refuses a wet thermometer colder than dry air could bring', () => {
		expect(() => humidityFromWetBulb.at({ air: celsius(40), wet: celsius(5), barometer: SEA_LEVEL })).toThrow(
			/humidity-from-wet-bulb: wet = 278\.15 K is below what the driest air/
		);
	});
});

describe('water in the air', () => {
	it('is none in dry air and half in air of half the humidity', () => {
		const air = celsius(25);
		expect(absoluteHumidity.at({ air, humidity: fraction(0) })).toBe(0);
		expect(absoluteHumidity.at({ air, humidity: fraction(0.5) })).toBeCloseTo(
			absoluteHumidity.at({ air, humidity: fraction(1) }) / 2,
			12
		);
	});
});

describe('the margin of a surface over the dew point', () => {
	it('is counted in degrees and below zero for a wet surface', () => {
		expect(dewPointMargin.at({ surface: celsius(18), dew: celsius(14) })).toBeCloseTo(4, 9);
		expect(dewPointMargin.at({ surface: celsius(12), dew: celsius(14) })).toBeCloseTo(-2, 9);
	});

	it('is just kept in the highest humidity for it', () => {
		fc.assert(
			fc.property(
				shopAir,
				fc.double({ min: 0, max: 8, noNaN: true }),
				fc.double({ min: 0, max: 5, noNaN: true }),
				(air, colder, margin) => {
					const surface = kelvin(air - colder);
					const humidity = highestHumidity.at({ air, surface, margin: degrees(margin) });
					const dew = dewPoint.at({ air, humidity });
					expect(dewPointMargin.at({ surface, dew })).toBeCloseTo(margin, 8);
				}
			)
		);
	});

	it('allows any humidity on a surface warmer than the air by the margin', () => {
		const air = celsius(20);
		const at = (surface: number) =>
			highestHumidity.at({ air, surface: celsius(surface), margin: degrees(3) });
		expect(at(23)).toBe(1);
		expect(at(30)).toBe(1);
		expect(at(22.9)).toBeLessThan(1);
	});
});

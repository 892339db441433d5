import { describe, expect, test } from 'vitest';
import { dewPoint } from '../../../../src/lib/engine/physics/humidity/dew-point';
import { noiseExposure } from '../../../../src/lib/engine/physics/exposure/noise-exposure';
import { oneNumber } from '../../../../src/lib/engine/plan/one-number';
import { given } from '../../../../src/lib/engine/plan/trace';
import { celsius, decibels, hours, percent } from '../../../../src/lib/engine/units/construct';

const label = { en: 'Dose', es: 'Dosis' };
const level = (value: number) => given('sound-level', decibels(value), { en: 'Noise', es: 'Ruido' });
const time = (value: number) => given('duration', hours(value), { en: 'Time', es: 'Tiempo' });
const { dose } = noiseExposure.osha;

describe('one number out of a procedure', () => {
	test('remembers each number of the lists it was made from, and the procedure', () => {
		// 4 h at 90, 2 h at 95 and 2 h at 85 dB(A): the worked example of a state guide gives 112.5 %
		const shift = { levels: [90, 95, 85].map(level), durations: [4, 2, 2].map(time) };
		const traced = oneNumber(dose, shift, 'fraction', label, (share) => share);
		expect(traced.value).toBeCloseTo(1.125, 10);
		expect(traced).toMatchObject({ dimension: 'fraction', label, origin: { kind: 'formula', id: dose.id } });
		expect(traced.provenance).toBe(dose.source);
		expect(Object.keys(traced.inputs)).toEqual([
			...['levels.0', 'levels.1', 'levels.2'],
			...['durations.0', 'durations.1', 'durations.2']
		]);
		expect(traced.inputs['levels.1']).toBe(shift.levels[1]);
	});

	test('is refused where the procedure refuses', () => {
		const deaf = { levels: [level(140)], durations: [time(1)] };
		expect(() => oneNumber(dose, deaf, 'fraction', label, (share) => share)).toThrow(
			new RegExp(`^${dose.id}: levels = 140 is outside`)
		);
	});
});

test('a number of the wrong quantity or name does not compile', () => {
	const humidity = given('fraction', percent(60), label);
	// @ts-expect-error a length is no temperature
	given('length', celsius(20), label);
	// @ts-expect-error humidity is no temperature
	expect(() => dewPoint.of({ air: humidity, humidity })).toThrow(/air is temperature in K, not fraction/);
	const periods = { levels: [level(90)], durations: [level(90)] };
	// @ts-expect-error a noise level is no time
	expect(oneNumber(dose, periods, 'fraction', label, (share) => share).value).toBeGreaterThan(0);
	// @ts-expect-error the lists go by other names
	expect(() => oneNumber(dose, { level: [] }, 'fraction', label, (share) => share)).toThrow();
});

test('what was invented says so', () => {
	expect(time(1).provenance).toEqual({ origin: 'example', verification: 'memory' });
	expect(time(1).origin).toEqual({ kind: 'example' });
});

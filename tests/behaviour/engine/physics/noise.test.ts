import { describe, expect, it } from 'vitest';
import { addedSound } from '../../../../src/lib/engine/physics/exposure/added-sound';
import { hearingProtector, RATING_KEPT } from '../../../../src/lib/engine/physics/exposure/hearing-protector';
import { noiseExposure } from '../../../../src/lib/engine/physics/exposure/noise-exposure';
import { count, decibels, fraction, hours } from '../../../../src/lib/engine/units/construct';
import type { SoundLevelC } from '../../../../src/lib/engine/units/dimension';

const lowNotes = (value: number) => value as SoundLevelC;

describe('noise', () => {
	it('two hours at 100 dB(A) are a full day by law and eight by health advice', () => {
		const day = { levels: [decibels(100)], durations: [hours(2)] };
		expect(noiseExposure.osha.dose.at(day)).toBeCloseTo(1, 12);
		expect(noiseExposure.niosh.dose.at(day)).toBeCloseTo(8, 12);
	});

	it('adds the doses of its periods', () => {
		const levels = [decibels(90), decibels(95)];
		expect(noiseExposure.osha.dose.at({ levels, durations: [hours(4), hours(1)] })).toBeCloseTo(0.75, 12);
	});

	it('needs a time for every level', () => {
		expect(() =>
			noiseExposure.niosh.dose.at({ levels: [decibels(90)], durations: [hours(1), hours(2)] })
		).toThrow('noise-dose-niosh: 1 levels do not pair with 2 durations');
	});

	it('the average of a full dose is the limit', () => {
		expect(noiseExposure.osha.average.at({ dose: fraction(1) })).toBe(90);
		expect(noiseExposure.niosh.average.at({ dose: fraction(1) })).toBe(85);
	});
});

describe('sources together', () => {
	it('one alone is as loud as it is, two alike 3 dB louder, ten alike 10 dB', () => {
		expect(addedSound.at({ levels: [decibels(87)] })).toBeCloseTo(87, 12);
		expect(addedSound.at({ levels: [decibels(87), decibels(87)] })).toBeCloseTo(90.01, 2);
		expect(addedSound.at({ levels: Array.from({ length: 10 }, () => decibels(80)) })).toBeCloseTo(90, 12);
	});
});

describe('hearing protectors', () => {
	const worn = { level: decibels(100), rating: count(27) };
	const wornC = { level: lowNotes(104), rating: count(27) };

	it('lose 7 dB of their rating to an A-weighted reading, and half of the rest at work', () => {
		expect(hearingProtector.a.at(worn)).toBe(80);
		expect(hearingProtector.aHalved.at(worn)).toBe(90);
		expect(hearingProtector.c.at(wornC)).toBe(77);
		expect(hearingProtector.cHalved.at(wornC)).toBe(90.5);
	});

	it('rated 7 take nothing off an A-weighted level', () => {
		expect(hearingProtector.a.at({ ...worn, rating: count(7) })).toBe(100);
	});

	it('by kind keep most as muffs and least as ready-made plugs', () => {
		const at = (kind: keyof typeof RATING_KEPT) =>
			hearingProtector.cByKind.at({ ...wornC, kept: fraction(RATING_KEPT[kind]) });
		expect(at('muff')).toBeCloseTo(104 - 20.25, 12);
		expect(at('formable-plug')).toBeCloseTo(104 - 13.5, 12);
		expect(at('other-plug')).toBeCloseTo(104 - 8.1, 12);
	});

	it('by kind never make it louder', () => {
		const at = (rating: number) =>
			hearingProtector.aByKind.at({ level: decibels(100), rating: count(rating), kept: fraction(0.3) });
		expect(at(20)).toBe(100);
		expect(at(30)).toBeCloseTo(98, 12);
	});
});

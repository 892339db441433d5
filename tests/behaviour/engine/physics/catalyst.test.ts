import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blendSolids } from '../../../../src/lib/engine/physics/mixing/blend-solids';
import { catalystShare } from '../../../../src/lib/engine/physics/mixing/catalyst-share';
import { explained } from '../../../../src/lib/engine/physics/explained';
import { mixSplit } from '../../../../src/lib/engine/physics/mixing/mix-split';
import { potLifeAt } from '../../../../src/lib/engine/physics/mixing/pot-life-at';
import { ratioFromShare } from '../../../../src/lib/engine/physics/mixing/ratio-from-share';
import { fromJob } from '../../../../src/lib/engine/plan/trace';
import {
	celsius,
	fraction,
	hours,
	litres,
	percent,
	psi,
	ratio
} from '../../../../src/lib/engine/units/construct';

describe('catalyst as a percentage', () => {
	it('is 4 % of the base at 25:1 and 3.846 % of the whole', () => {
		expect(catalystShare.ofBase.at({ ratio: ratio(25) })).toBeCloseTo(0.04, 12);
		expect(catalystShare.ofTotal.at({ ratio: ratio(25) })).toBeCloseTo(1 / 26, 12);
	});

	it('read as 4 % is 25:1 of the base and 24:1 of the whole', () => {
		expect(ratioFromShare.ofBase.at({ share: percent(4) })).toBeCloseTo(25, 9);
		expect(ratioFromShare.ofTotal.at({ share: percent(4) })).toBeCloseTo(24, 9);
	});

	it('comes back from the ratio, and agrees with the batch parted', () => {
		fc.assert(
			fc.property(fc.double({ min: 0.1, max: 150, noNaN: true }), (parts) => {
				const mix = { ratio: ratio(parts) };
				const of = { batch: litres(1), ...mix };
				const [base, hardener] = [mixSplit.volume.base.at(of), mixSplit.volume.hardener.at(of)];
				expect(catalystShare.ofBase.at(mix)).toBeCloseTo(hardener / base, 9);
				expect(catalystShare.ofTotal.at(mix)).toBeCloseTo(hardener / litres(1), 9);
				const share = catalystShare.ofTotal.at(mix);
				if (share <= 0.95 && share >= 0.005)
					expect(ratioFromShare.ofTotal.at({ share })).toBeCloseTo(parts, 6);
			})
		);
	});
});

describe('solids of a blend', () => {
	it('are those of its parts by their volumes', () => {
		const volumes = [litres(4), litres(1)];
		expect(blendSolids.at({ volumes, solids: [percent(40), percent(0)] })).toBeCloseTo(0.32, 12);
		expect(blendSolids.at({ volumes, solids: [percent(40), percent(90)] })).toBeCloseTo(0.5, 12);
		expect(blendSolids.at({ volumes: [litres(2)], solids: [fraction(1)] })).toBe(1);
	});

	it('need one number for each, and something to blend', () => {
		expect(() => blendSolids.at({ volumes: [litres(1), litres(2)], solids: [fraction(0.4)] })).toThrow(
			'blend-solids: 2 volumes need as many solids, not 1'
		);
		expect(() =>
			blendSolids.at({ volumes: [litres(0), litres(0)], solids: [fraction(0), fraction(1)] })
		).toThrow('blend-solids: the volumes must add up to more than 0');
	});
});

describe('pot life where the rule ends', () => {
	const at = (mix: number, stated = hours(4)) =>
		potLifeAt.at({ stated, statedAt: celsius(23), mix: celsius(mix) });
	const given = (dimension: 'temperature' | 'pressure', value: number) =>
		fromJob('x', dimension, value as never, { en: 'x', es: 'y' }) as never;
	const traced = (mix: never) =>
		potLifeAt.of({
			stated: fromJob('x', 'duration', hours(4), { en: 'x', es: 'y' }),
			statedAt: given('temperature', celsius(23)),
			mix
		});

	it('is refused for an oven with the reason, traced or not', () => {
		expect(() => at(150)).toThrow(/^pot-life-at: mix = 423\.15 is outside .*: doubling .* activation energy/);
		expect(() => traced(given('temperature', celsius(150)))).toThrow(/is outside .*activation energy/);
		expect(at(45)).toBeGreaterThan(0);
	});

	it('gives that reason for nothing else', () => {
		expect(() => at(-1)).toThrow(/mix = 272\.15 is outside .* \(SI\)$/);
		expect(() => at(20, hours(1000))).toThrow(/stated = .* is outside .* \(SI\)$/);
		expect(() => at(45, hours(1000))).toThrow(/stated = .* is outside .* \(SI\)$/);
		expect(() => traced(given('pressure', psi(90)))).toThrow(TypeError);
		expect(() => traced(given('pressure', psi(90)))).toThrow(/not pressure$/);
	});

	it('keeps the first refusal as the cause of the longer one', () => {
		const short = new RangeError('x = 2 is outside 0 to 1');
		expect(explained(short, 'so it is')).toEqual(new RangeError('x = 2 is outside 0 to 1: so it is'));
		expect((explained(short, 'so it is') as Error).cause).toBe(short);
		const other = new TypeError('x is a length');
		expect(explained(other, 'so it is')).toBe(other);
	});

	it('is traced as ever', () => {
		const life = traced(given('temperature', celsius(33)));
		expect(life.value).toBeCloseTo(hours(2), 6);
		expect(life.origin).toEqual({ kind: 'formula', id: 'pot-life-at' });
	});
});

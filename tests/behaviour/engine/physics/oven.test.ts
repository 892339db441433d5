import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { activationEnergy } from '../../../../src/lib/engine/physics/cure/activation-energy';
import { biot } from '../../../../src/lib/engine/physics/heat/biot';
import { coreHeatUpTime } from '../../../../src/lib/engine/physics/heat/core-heat-up-time';
import { cureCredit } from '../../../../src/lib/engine/physics/cure/cure-credit';
import { cureEquivalence } from '../../../../src/lib/engine/physics/cure/cure-equivalence';
import { heatModel } from '../../../../src/lib/engine/physics/heat/heat-model';
import { heatUpTime } from '../../../../src/lib/engine/physics/heat/heat-up-time';
import { lastWhere } from '../../../../src/lib/engine/physics/last-where';
import { rackHeatUp } from '../../../../src/lib/engine/physics/heat/rack-heat-up';
import { thermalDiffusivity } from '../../../../src/lib/engine/physics/heat/thermal-diffusivity';
import { timeAbove } from '../../../../src/lib/engine/physics/cure/time-above';
import { wallHeatUp } from '../../../../src/lib/engine/physics/heat/wall-heat-up';
import { wallTemperatureAfter } from '../../../../src/lib/engine/physics/heat/wall-temperature-after';
import { wallTerms } from '../../../../src/lib/engine/physics/heat/wall-terms';
import {
	celsius,
	fraction,
	kelvin,
	minutes,
	ratio,
	seconds
} from '../../../../src/lib/engine/units/construct';
import type {
	Conductivity,
	HeatTransfer,
	KilogramPerCubicMetre,
	Metre,
	MolarEnergy,
	SpecificHeat
} from '../../../../src/lib/engine/units/dimension';

const wall = (conductivity: number, depth: number) => ({
	density: 1200 as KilogramPerCubicMetre,
	heat: 1200 as SpecificHeat,
	conductivity: conductivity as Conductivity,
	depth: depth as Metre,
	heatTransfer: 25 as HeatTransfer
});
/** Half of a plastic wall of 10 mm: Biot number 0.625. */
const PLASTIC = wall(0.2, 0.005);
/** The same heat in something that conducts like copper: Biot number 0.0003. */
const COPPER = wall(400, 0.005);
const PATH = { start: celsius(20), air: celsius(90), target: celsius(80) };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('the last number where something holds', () => {
	it('is found to the last digit, from either side', () => {
		expect(lastWhere((at) => at <= Math.SQRT2, 0, 2)).toBe(Math.SQRT2);
		expect(lastWhere((at) => at >= 1, 3, 0)).toBe(1);
		expect(lastWhere(() => true, 0, 1)).toBe(1 - 2 ** -53);
		expect(lastWhere(() => false, 5, 6)).toBe(5);
	});
});

describe('the series of a wall', () => {
	it('has one term in each quarter turn, and each solves its equation', () => {
		fc.assert(
			fc.property(between(-5, 3.9), (exponent) => {
				const number = 10 ** exponent;
				const terms = wallTerms.at({ biot: fraction(number) });
				expect(terms).toHaveLength(5);
				terms.forEach(({ root, weight }, index) => {
					expect(root).toBeGreaterThanOrEqual(index * Math.PI);
					expect(root).toBeLessThanOrEqual((index + 0.5) * Math.PI);
					expect(root * Math.sin(root)).toBeCloseTo(number * Math.cos(root), 7);
					expect(Math.sign(weight)).toBe(index % 2 ? -1 : 1);
				});
			}),
			{ numRuns: 100 }
		);
	});

	it('goes from one whole part to one whose face is at once as hot as the air', () => {
		const [slow] = wallTerms.at({ biot: fraction(1e-4) });
		expect(slow!.root ** 2).toBeCloseTo(1e-4, 8);
		expect(slow!.weight).toBeCloseTo(1, 4);
		const [fast, next] = wallTerms.at({ biot: fraction(1e4) });
		expect(fast!.root).toBeCloseTo(Math.PI / 2, 3);
		expect(fast!.weight).toBeCloseTo(4 / Math.PI, 4);
		expect(next!.weight).toBeCloseTo(-4 / (3 * Math.PI), 4);
	});
});

describe('conduction in a wall', () => {
	const after = (spent: number, place: number, body = PLASTIC) =>
		wallTemperatureAfter.at({ ...body, ...PATH, spent: seconds(spent), place: fraction(place) });
	/** Seconds in one Fourier number of the plastic wall. */
	const one = 0.005 ** 2 / thermalDiffusivity.at(PLASTIC);

	it('leaves the core behind the face, and both between start and air', () => {
		fc.assert(
			fc.property(between(0.006, 5), between(0, 1), (fourier, place) => {
				const [core, here, face] = [
					after(fourier * one, 0),
					after(fourier * one, place),
					after(fourier * one, 1)
				];
				expect(core).toBeGreaterThanOrEqual(PATH.start - 1e-9);
				expect(here).toBeGreaterThanOrEqual(core - 1e-9);
				expect(face).toBeGreaterThanOrEqual(here - 1e-9);
				expect(face).toBeLessThan(PATH.air);
			}),
			{ numRuns: 60 }
		);
	});

	it('gives the face from outside what the wall takes in', () => {
		// h·(T∞ − face) is what flows in; the heat stored grows by just that
		const stored = (spent: number) => {
			let sum = 0;
			const steps = 200;
			for (let step = 0; step <= steps; step++)
				sum += (step % steps ? (step % 2 ? 4 : 2) : 1) * (after(spent, step / steps) - PATH.start);
			return (1200 * 1200 * 0.005 * sum) / (3 * steps);
		};
		const [early, late] = [0.3 * one, 0.3001 * one];
		const flow = (stored(late) - stored(early)) / (late - early);
		expect(flow).toBeCloseTo(25 * (PATH.air - after(0.30005 * one, 1)), 1);
	});

	it('reaches the core after the time that is asked for, whatever the wall', () => {
		fc.assert(
			fc.property(between(0.05, 400), between(1e-3, 0.05), between(21, 89), (k, depth, degrees) => {
				const body = wall(k, depth);
				const target = celsius(degrees);
				const spent = coreHeatUpTime.at({ ...body, ...PATH, target });
				expect(after(spent, 0, body)).toBeCloseTo(target, 6);
			}),
			{ numRuns: 100 }
		);
	});

	it('cools as it heats', () => {
		const hot = { start: celsius(90), air: celsius(20), target: celsius(30) };
		expect(coreHeatUpTime.at({ ...PLASTIC, ...hot })).toBeCloseTo(
			coreHeatUpTime.at({ ...PLASTIC, ...PATH }),
			6
		);
	});

	it('takes no time to stay, and refuses what the air does not bring', () => {
		expect(coreHeatUpTime.at({ ...PLASTIC, ...PATH, target: PATH.start })).toBe(0);
		for (const target of [PATH.air, celsius(91), celsius(19)])
			expect(() => coreHeatUpTime.at({ ...PLASTIC, ...PATH, target })).toThrow('heat-up');
	});

	it('goes with the square of the wall where the air could not be hotter to it', () => {
		const bath = { heatTransfer: 10_000 as HeatTransfer };
		const time = (depth: number) => coreHeatUpTime.at({ ...wall(0.2, depth), ...bath, ...PATH });
		expect(time(0.02) / time(0.01)).toBeCloseTo(4, 1);
	});

	it('says nothing of the first moments, when only the skin has noticed', () => {
		expect(() => after(0.00499 * one, 1)).toThrow(/^wall-temperature-after: spent = .* too short/);
		expect(() => after(0, 0)).toThrow('too short');
		expect(after(0.005 * one * (1 + 1e-9), 0)).toBeCloseTo(PATH.start, 9);
		const slab = {
			...wall(500, 0.5),
			density: 500 as KilogramPerCubicMetre,
			heat: 100 as SpecificHeat
		};
		// 25 s in one Fourier number, so this is 0.005 to the digit
		expect(after(0.125, 0, slab)).toBeCloseTo(PATH.start, 9);
	});

	it('is settled at the air when nothing is left to even out', () => {
		expect(after(500 * one, 0)).toBe(PATH.air);
	});
});

describe('which model', () => {
	it('is chosen by the Biot number, conduction from 0.1 on', () => {
		const at = (conductivity: number) =>
			heatModel.at({
				heatTransfer: 25 as HeatTransfer,
				depth: 0.004 as Metre,
				conductivity: conductivity as Conductivity
			});
		expect(at(1)).toEqual({ biot: 0.1, model: 'conduction' });
		expect(at(1.001).model).toBe('lumped');
		expect(at(400)).toEqual({ biot: 0.00025, model: 'lumped' });
	});

	it('the wall follows it', () => {
		expect(wallHeatUp.at({ ...COPPER, ...PATH })).toBe(heatUpTime.at({ ...COPPER, ...PATH }));
		expect(wallHeatUp.at({ ...PLASTIC, ...PATH })).toBe(coreHeatUpTime.at({ ...PLASTIC, ...PATH }));
	});

	it('matters little where they meet and much beyond', () => {
		const late = (body: typeof PLASTIC) =>
			coreHeatUpTime.at({ ...body, ...PATH }) / heatUpTime.at({ ...body, ...PATH });
		expect(late(COPPER)).toBeCloseTo(1, 3);
		expect(biot.at(wall(1.25, 0.005))).toBe(0.1);
		expect(late(wall(1.25, 0.005))).toBeGreaterThan(1);
		expect(late(wall(1.25, 0.005))).toBeLessThan(1.06);
		expect(late(PLASTIC)).toBeGreaterThan(1.2);
	});
});

describe('a rack of unlike parts', () => {
	const OVEN = {
		heatTransfer: 25 as HeatTransfer,
		start: celsius(20),
		air: celsius(100),
		target: celsius(80),
		top: celsius(95),
		hold: minutes(5)
	};
	const NONE = celsius(200);
	const rack = (
		bodies: readonly (typeof PLASTIC)[],
		limits: readonly number[],
		over: Partial<typeof OVEN> = {}
	) =>
		rackHeatUp.at({
			densities: bodies.map(({ density }) => density),
			heats: bodies.map(({ heat }) => heat),
			conductivities: bodies.map(({ conductivity }) => conductivity),
			depths: bodies.map(({ depth }) => depth),
			limits: limits.map(kelvin),
			...OVEN,
			...over
		});
	const [thin, thick] = [wall(400, 0.001), wall(400, 0.01)];
	const lumped = (body: typeof PLASTIC, degrees: number) =>
		heatUpTime.at({ ...body, ...OVEN, target: celsius(degrees) });

	it('soaks by the slowest and is over by the quickest', () => {
		const { parts, ...rest } = rack([thin, thick], [NONE, NONE]);
		expect(parts).toEqual([
			{ reached: lumped(thin, 80), over: lumped(thin, 95) },
			{ reached: lumped(thick, 80), over: lumped(thick, 95) }
		]);
		expect(rest).toEqual({
			lastToSoak: 1,
			firstOver: 0,
			soaked: lumped(thick, 80) + 300,
			oneClock: false
		});
		expect(rack([thick, thin], [NONE, NONE])).toMatchObject({ lastToSoak: 0, firstOver: 1 });
	});

	it('has no first to overheat where the air stays below every limit', () => {
		const cool = { air: celsius(95) };
		expect(rack([thin, thick], [NONE, NONE], cool)).toMatchObject({ firstOver: null, oneClock: true });
		expect(rack([thin, thick], [NONE, NONE], { air: celsius(95.01) }).firstOver).toBe(0);
	});

	it('holds each part to its own limit where that is lower than the window’s top', () => {
		const { parts, firstOver } = rack([thin, thick], [NONE, celsius(85)]);
		expect(parts[1]!.over).toBe(lumped(thick, 85));
		expect(firstOver).toBe(0);
		for (const body of [thin, PLASTIC])
			expect(rack([body, thick], [celsius(20), NONE]).parts[0]!.over).toBe(0);
		expect(rack([thin, thick], [celsius(19), NONE])).toMatchObject({ firstOver: 0, oneClock: false });
	});

	it('can use one clock just as long as the hold ends in time', () => {
		const spare = lumped(thin, 95) - lumped(thin, 80);
		expect(rack([thin], [NONE], { hold: seconds(spare * 0.999999) }).oneClock).toBe(true);
		expect(rack([thin], [NONE], { hold: seconds(spare * 1.000001) }).oneClock).toBe(false);
		// reached is not passed
		expect(rack([thin], [OVEN.target], { hold: seconds(0) }).oneClock).toBe(true);
	});

	it('takes the first of two equal parts for the last to soak and the first to be over', () => {
		expect(rack([thin, thin], [NONE, NONE])).toMatchObject({ lastToSoak: 0, firstOver: 0 });
	});

	it('waits for the core of plastic, whose face is over long before', () => {
		const [part] = rack([wall(0.2, 0.02)], [NONE]).parts;
		const body = { ...wall(0.2, 0.02), start: OVEN.start, air: OVEN.air };
		expect(part!.reached).toBe(coreHeatUpTime.at({ ...body, target: OVEN.target }));
		expect(wallTemperatureAfter.at({ ...body, spent: seconds(part!.over!), place: fraction(1) })).toBeCloseTo(
			celsius(95),
			6
		);
		const face = rack([wall(0.02, 0.1)], [celsius(60)], { heatTransfer: 1000 as HeatTransfer }).parts[0]!;
		// over before the series begins: counts as over when it begins
		expect(face.over).toBeCloseTo(0.005 * (0.1 ** 2 / thermalDiffusivity.at(wall(0.02, 0.1))), 3);
	});

	it('refuses lists of different length', () => {
		for (const short of ['densities', 'heats', 'conductivities', 'depths', 'limits'] as const) {
			const two = {
				densities: [thin.density, thick.density],
				heats: [thin.heat, thick.heat],
				conductivities: [thin.conductivity, thick.conductivity],
				depths: [thin.depth, thick.depth],
				limits: [NONE, NONE]
			};
			expect(() => rackHeatUp.at({ ...OVEN, ...two, [short]: two[short].slice(1) })).toThrow(
				'differ in length'
			);
		}
	});
});

type Reading = readonly [minute: number, degrees: number];
const chart = (...readings: readonly Reading[]) => ({
	times: readings.map(([minute]) => minutes(minute)),
	temperatures: readings.map(([, degrees]) => celsius(degrees))
});

describe('time above a temperature', () => {
	const above = (degrees: number, ...readings: readonly Reading[]) => {
		const { total, longest } = timeAbove.at({ ...chart(...readings), threshold: celsius(degrees) });
		return [total / 60, longest / 60].map((value) => Number(value.toFixed(9)));
	};

	it('counts between readings by the straight line', () => {
		expect(above(100, [0, 50], [10, 150], [20, 50])).toEqual([10, 10]);
		expect(above(100, [0, 50], [10, 150], [30, 150], [40, 50])).toEqual([30, 30]);
		expect(above(125, [0, 150], [10, 50])).toEqual([2.5, 2.5]);
		expect(above(75, [0, 150], [10, 50])).toEqual([7.5, 7.5]);
		expect(above(60, [0, 20], [10, 120], [12, 120])).toEqual([8, 8]);
	});

	it('keeps the longest stretch apart from the total', () => {
		expect(above(100, [0, 50], [10, 150], [20, 50], [30, 150], [60, 150])).toEqual([45, 35]);
		expect(above(100, [0, 150], [30, 150], [40, 50], [50, 150], [55, 150])).toEqual([45, 35]);
	});

	it('does not break off at a dip that only touches, nor count a peak that only touches', () => {
		expect(above(100, [0, 120], [10, 100], [20, 120])).toEqual([20, 20]);
		expect(above(100, [0, 80], [10, 100], [20, 80])).toEqual([0, 0]);
		expect(above(100, [0, 100], [10, 100])).toEqual([10, 10]);
		expect(above(100, [0, 99], [10, 99])).toEqual([0, 0]);
		expect(above(100, [0, 120], [10, 99.9999], [20, 120])[1]).toBeCloseTo(10, 3);
	});

	it('is the whole chart below it and nothing above it', () => {
		const readings = [
			[0, 50],
			[7, 90],
			[9, 70]
		] as const;
		expect(above(40, ...readings)).toEqual([9, 9]);
		expect(above(91, ...readings)).toEqual([0, 0]);
	});

	it('refuses readings that are not in order', () => {
		const at = (given: ReturnType<typeof chart>) => () => timeAbove.at({ ...given, threshold: celsius(100) });
		expect(at(chart([0, 50], [10, 60], [5, 70]))).toThrow(/^time-above: times must rise, 300 follows 600/);
		expect(at(chart([0, 50], [0, 60]))).toThrow('times must rise');
		expect(at(chart([0, 50]))).toThrow('two readings');
		expect(at({ ...chart([0, 50], [1, 60]), temperatures: [celsius(50)] })).toThrow('differ in length');
	});
});

describe('the cure on a chart', () => {
	const WINDOW = {
		lowest: celsius(140),
		highest: celsius(160),
		reference: celsius(150),
		activation: 75_000 as MolarEnergy
	};
	const credit = (...readings: readonly Reading[]) => cureCredit.at({ ...chart(...readings), ...WINDOW });

	it('at the reference is the time itself', () => {
		const { equivalent, inside } = credit([5, 150], [25, 150]);
		expect(equivalent).toBeCloseTo(1200, 9);
		expect(inside).toBe(1200);
	});

	it('elsewhere in the window is what one temperature is worth', () => {
		for (const degrees of [140, 145, 155, 160]) {
			const worth = credit([0, degrees], [20, degrees]).equivalent;
			const back = cureEquivalence.at({
				stated: seconds(worth),
				statedAt: celsius(150),
				at: celsius(degrees),
				activation: WINDOW.activation
			});
			expect(back).toBeCloseTo(1200, 6);
		}
	});

	it('counts nothing outside the window, above it least of all', () => {
		expect(credit([0, 139.9], [20, 139.9])).toEqual({ equivalent: 0, inside: 0 });
		expect(credit([0, 160.1], [20, 160.1])).toEqual({ equivalent: 0, inside: 0 });
		expect(credit([0, 20], [10, 120], [60, 120])).toEqual({ equivalent: 0, inside: 0 });
		const through = credit([0, 100], [10, 200]);
		expect(through.inside).toBeCloseTo(120, 9);
		expect(credit([0, 200], [10, 100]).equivalent).toBeCloseTo(through.equivalent, 9);
	});

	it('of a ramp is the same as of many short holds on it', () => {
		const { equivalent } = credit([0, 140], [20, 160]);
		let sum = 0;
		const steps = 4000;
		for (let step = 0; step < steps; step++) {
			const degrees = 140 + (20 * (step + 0.5)) / steps;
			sum += credit([0, degrees], [20 / steps, degrees]).equivalent;
		}
		expect(equivalent).toBeCloseTo(sum, 3);
		expect(equivalent).toBeGreaterThan(1200);
	});

	it('refuses a reference outside the window, and readings that are not in order', () => {
		const flat = chart([0, 150], [20, 150]);
		for (const reference of [139.9, 160.1])
			expect(() => cureCredit.at({ ...flat, ...WINDOW, reference: celsius(reference) })).toThrow(
				'does not lie in the window'
			);
		expect(() => cureCredit.at({ ...flat, ...WINDOW, lowest: celsius(161) })).toThrow('does not lie');
		for (const reference of [140, 160])
			expect(cureCredit.at({ ...flat, ...WINDOW, reference: celsius(reference) }).inside).toBe(1200);
		expect(() => credit([5, 150], [4, 150])).toThrow(/^cure-credit: times must rise/);
	});
});

describe('activation energy', () => {
	const energy = (times: number, cooler: number, warmer: number) =>
		activationEnergy.at({ times: ratio(times), cooler: celsius(cooler), warmer: celsius(warmer) }) / 1e3;

	it('is none where the rate stays, and what the equivalence turns back', () => {
		expect(energy(1, 20, 30)).toBe(0);
		const activation = (energy(3, 120, 140) * 1e3) as MolarEnergy;
		const hot = { stated: minutes(60), statedAt: celsius(120), at: celsius(140), activation };
		expect(cureEquivalence.at(hot)).toBeCloseTo(1200, 6);
	});

	it('of a rate that doubles every ten degrees is twice as much in the oven as in the shop', () => {
		expect(energy(2, 20, 30)).toBeGreaterThan(50);
		expect(energy(2, 20, 30)).toBeLessThan(54);
		expect(energy(2, 140, 150)).toBeGreaterThan(98);
		expect(energy(2, 140, 150)).toBeLessThan(106);
	});

	it('refuses temperatures the wrong way round', () => {
		expect(() => energy(2, 30, 20)).toThrow(/^activation-energy: warmer = /);
		expect(() => energy(2, 30, 30)).toThrow(/^activation-energy: warmer = /);
	});
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { absolutePressure } from '../../../../src/lib/engine/physics/air/absolute-pressure';
import { airLineDrop } from '../../../../src/lib/engine/physics/air/air-line-drop';
import { blastNozzleAir } from '../../../../src/lib/engine/physics/air/blast-nozzle-air';
import { chokedAirFlow } from '../../../../src/lib/engine/physics/air/choked-air-flow';
import { compressorDelivery } from '../../../../src/lib/engine/physics/air/compressor-delivery';
import { compressorPower } from '../../../../src/lib/engine/physics/air/compressor-power';
import { criticalPressureRatio } from '../../../../src/lib/engine/physics/air/critical-pressure-ratio';
import { deliveryNeeded } from '../../../../src/lib/engine/physics/air/delivery-needed';
import { freeAir } from '../../../../src/lib/engine/physics/air/free-air';
import { handbookOrificeFlow } from '../../../../src/lib/engine/physics/air/handbook-orifice-flow';
import { subcriticalAirFlow } from '../../../../src/lib/engine/physics/air/subcritical-air-flow';
import { wornNozzleAir } from '../../../../src/lib/engine/physics/air/worn-nozzle-air';
import * as u from '../../../../src/lib/engine/units/construct';
import type { CubicMetrePerSecond, KilogramPerSecond } from '../../../../src/lib/engine/units/dimension';

const flow = (value: number) => value as CubicMetrePerSecond;
const critical = criticalPressureRatio.at({ heatRatio: u.ratio(1.4) });
const UPSTREAM = 800e3;
const nozzle = (share: number) => ({
	area: u.squareMetres(2e-5),
	coefficient: u.fraction(1),
	upstream: u.pascal(UPSTREAM),
	downstream: u.pascal(share * UPSTREAM),
	temperature: u.kelvin(300)
});

it('a gauge reads against the air around it', () => {
	expect(absolutePressure.at({ gauge: u.pascal(500e3), air: u.pascal(95e3) })).toBe(595e3);
});

describe('a nozzle', () => {
	const choked = chokedAirFlow.at(nozzle(0));

	it('passes no more for a lower pressure outside once it is choked', () => {
		for (const share of [0.1, 0.4, critical]) expect(chokedAirFlow.at(nozzle(share))).toBe(choked);
	});

	it('has one equation on each side of the choking pressure, and they meet there', () => {
		expect(() => chokedAirFlow.at(nozzle(critical + 1e-9))).toThrow(
			/choked-air-flow: .* allowed is up to 0\.5283/
		);
		expect(() => subcriticalAirFlow.at(nozzle(critical))).toThrow(
			/subcritical-air-flow: .* allowed is above 0\.5283 up to 1/
		);
		expect(subcriticalAirFlow.at(nozzle(critical + 1e-6)) / choked).toBeCloseTo(1, 9);
	});

	it('passes less and less below sonic, nothing without a difference, and never backwards', () => {
		const flows = [0.55, 0.7, 0.85, 0.99].map((share) => subcriticalAirFlow.at(nozzle(share)));
		expect(flows.toSorted((a, b) => b - a)).toEqual(flows);
		expect(flows[0]).toBeLessThan(choked);
		expect(subcriticalAirFlow.at(nozzle(1))).toBe(0);
		expect(() => subcriticalAirFlow.at(nozzle(1.001))).toThrow('allowed is above');
	});

	it('close to no difference behaves like one of water: √(2·ρ·Δp)', () => {
		const share = 0.9999;
		const density = UPSTREAM / (287.05 * 300);
		const ideal = 2e-5 * Math.sqrt(2 * density * (1 - share) * UPSTREAM);
		expect(subcriticalAirFlow.at(nozzle(share)) / ideal).toBeCloseTo(1, 3);
	});

	it.each([
		['choked', chokedAirFlow, 0.2],
		['below sonic', subcriticalAirFlow, 0.8]
	] as const)('%s: follows area and coefficient, and hot air is thinner', (_name, formula, share) => {
		const one = nozzle(share);
		const base = formula.at(one);
		expect(formula.at({ ...one, area: u.squareMetres(4e-5) }) / base).toBeCloseTo(2, 12);
		expect(formula.at({ ...one, coefficient: u.fraction(0.61) }) / base).toBeCloseTo(0.61, 12);
		expect(formula.at({ ...one, temperature: u.kelvin(600) }) / base).toBeCloseTo(Math.SQRT1_2, 12);
	});

	it('chokes at a lower share the stiffer the gas', () => {
		const ratios = [1.1, 1.3, 1.4, 1.67].map((k) => criticalPressureRatio.at({ heatRatio: u.ratio(k) }));
		expect(ratios.toSorted((a, b) => b - a)).toEqual(ratios);
	});
});

describe('the handbook formula', () => {
	const orifice = (upstream: number) => ({
		area: u.squareMetres(2e-5),
		coefficient: u.fraction(1),
		upstream: u.pascal(upstream),
		barometer: u.pascal(100e3),
		temperature: u.kelvin(300)
	});

	it('lies 0.3 % under the sonic flow', () => {
		const share = handbookOrificeFlow.at(orifice(UPSTREAM)) / chokedAirFlow.at(nozzle(0));
		expect(share).toBeGreaterThan(0.9965);
		expect(share).toBeLessThan(0.998);
	});

	it('is used from twice the barometer on', () => {
		expect(handbookOrificeFlow.at(orifice(200e3))).toBeGreaterThan(0);
		expect(() => handbookOrificeFlow.at(orifice(199.9e3))).toThrow('allowed is from 200000 Pa');
	});

	it('follows the coefficient', () => {
		const whole = handbookOrificeFlow.at(orifice(UPSTREAM));
		expect(
			handbookOrificeFlow.at({ ...orifice(UPSTREAM), coefficient: u.fraction(0.65) }) / whole
		).toBeCloseTo(0.65, 12);
	});
});

describe('free air', () => {
	const of = (degrees: number, pressure = 100e3) =>
		freeAir.at({
			flow: 0.012 as KilogramPerSecond,
			temperature: u.celsius(degrees),
			pressure: u.pascal(pressure)
		});

	it('is 7 % more at 20 °C than at 0 °C, and less under a higher barometer', () => {
		expect(of(20) / of(0)).toBeCloseTo(293.15 / 273.15, 12);
		expect(of(20, 80e3) / of(20)).toBeCloseTo(100 / 80, 12);
	});

	it('of 1.2 kg at 20 °C and 101.325 kPa is about a cubic metre', () => {
		expect(of(20, 101_325) / 0.01).toBeCloseTo(1, 2);
	});
});

describe('a blast nozzle', () => {
	const air = (bore: number, gauge: number, coefficient = 0.78) =>
		blastNozzleAir.at({
			bore: u.millimetres(bore),
			gauge: u.bar(gauge),
			coefficient: u.fraction(coefficient)
		});

	it('takes four times the air through twice the bore', () => {
		expect(air(6.4, 5) / air(3.2, 5)).toBeCloseTo(4, 12);
	});

	it('takes air by the absolute pressure while it is choked', () => {
		expect(air(4.8, 6) / air(4.8, 3)).toBeCloseTo((6 + 1.01325) / (3 + 1.01325), 12);
	});

	it('takes less than that below choking, without a step between', () => {
		const chokes = (1.01325 / critical) * 1e5 - 101_325;
		expect(air(4.8, (chokes - 1) / 1e5) / air(4.8, (chokes + 1) / 1e5)).toBeCloseTo(1, 4);
		expect(air(4.8, 0.3) / air(4.8, 3)).toBeLessThan((0.3 + 1.01325) / (3 + 1.01325));
	});

	it('is the mass through its bore, as air of 20 °C in the open', () => {
		const flow = chokedAirFlow.at({
			area: u.squareMetres((Math.PI / 4) * 0.0064 ** 2),
			coefficient: u.fraction(0.8),
			upstream: u.pascal(601_325),
			downstream: u.pascal(101_325),
			temperature: u.celsius(20)
		});
		const open = { temperature: u.celsius(20), pressure: u.pascal(101_325) };
		expect(air(6.4, 5, 0.8)).toBeCloseTo(freeAir.at({ flow, ...open }), 12);
	});

	it('a quarter wider takes more than half again', () => {
		const worn = (to: number) =>
			wornNozzleAir.at({ air: flow(0.02), bore: u.millimetres(6.4), worn: u.millimetres(to) });
		expect(worn(8) / 0.02).toBeCloseTo(1.5625, 12);
		expect(worn(6.4)).toBe(0.02);
		expect(() => worn(6.3)).toThrow(/worn-nozzle-air: .* is not worn; allowed is from/);
	});
});

describe('a compressor', () => {
	const shares = { leak: u.percent(10), reserve: u.percent(25) };

	it('for one user: demand by duty, over what arrives, and the reserve', () => {
		expect(
			deliveryNeeded.at({
				demand: flow(0.018),
				duty: u.percent(50),
				leak: u.percent(10),
				reserve: u.percent(25)
			})
		).toBeCloseTo(0.0125, 12);
		expect(
			deliveryNeeded.at({
				demand: flow(0.018),
				duty: u.percent(100),
				leak: u.percent(0),
				reserve: u.percent(0)
			})
		).toBe(0.018);
	});

	it('for several users: the sum of what each needs', () => {
		const users = fc.array(
			fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })),
			{ minLength: 1, maxLength: 8 }
		);
		fc.assert(
			fc.property(users, (pairs) => {
				const demand = pairs.map(([one]) => flow(one));
				const duty = pairs.map(([, share]) => u.fraction(share));
				const each = pairs.map(([one, share]) =>
					deliveryNeeded.at({ demand: flow(one), duty: u.fraction(share), ...shares })
				);
				const sum = each.reduce<number>((total, one) => total + one, 0);
				expect(compressorDelivery.at({ demand, duty, ...shares })).toBeCloseTo(sum, 9);
			})
		);
	});

	it('refuses users without a duty, duties without a user, and no users', () => {
		const one = [flow(0.01)];
		const half = [u.fraction(0.5)];
		const sized = (demand: typeof one, duty: typeof half) => () =>
			compressorDelivery.at({ demand, duty, ...shares });
		expect(sized([...one, ...one], half)).toThrow('1 duties for 2 users; allowed is one for each');
		expect(sized(one, [...half, ...half])).toThrow('2 duties for 1 users');
		expect(sized([], [])).toThrow('holds no values');
		expect(sized(one, [u.fraction(1.1)])).toThrow('duty = 1.1 is outside 0 to 1');
	});

	it('takes power in step with its air', () => {
		expect(compressorPower.at({ air: flow(0.04) })).toBe(2 * compressorPower.at({ air: flow(0.02) }));
	});
});

describe('an air line', () => {
	const line = { length: u.metres(10), air: flow(0.01), gauge: u.bar(6), bore: u.millimetres(19) };
	const drop = airLineDrop.at(line);

	it('loses with its length, the square of the air and the 5.31th power of a narrower bore', () => {
		expect(airLineDrop.at({ ...line, length: u.metres(20) }) / drop).toBeCloseTo(2, 12);
		expect(airLineDrop.at({ ...line, air: flow(0.02) }) / drop).toBeCloseTo(4, 12);
		expect(airLineDrop.at({ ...line, bore: u.millimetres(13) }) / drop).toBeCloseTo((19 / 13) ** 5.31, 9);
		expect(airLineDrop.at({ ...line, gauge: u.bar(12) }) / drop).toBeCloseTo(7.01325 / 13.01325, 12);
	});

	it('is not worked out where it loses more than a tenth of its pressure', () => {
		const absolute = 701_325;
		const tenth = 10 * ((0.1 * absolute) / drop);
		expect(airLineDrop.at({ ...line, length: u.metres(tenth * 0.9999) }) / absolute).toBeCloseTo(0.1, 4);
		expect(() => airLineDrop.at({ ...line, length: u.metres(tenth * 1.0001) })).toThrow(
			/air-line-drop: .* Pa is too much of 701325 Pa; allowed is up to 0\.1 of it/
		);
	});
});

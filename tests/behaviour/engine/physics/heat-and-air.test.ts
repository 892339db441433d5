import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bodyDepth } from '../../../../src/lib/engine/physics/heat/body-depth';
import { boothFlow } from '../../../../src/lib/engine/physics/solvent/booth-flow';
import { cureEquivalence } from '../../../../src/lib/engine/physics/cure/cure-equivalence';
import { dewPoint } from '../../../../src/lib/engine/physics/humidity/dew-point';
import { heatUpTime } from '../../../../src/lib/engine/physics/heat/heat-up-time';
import { hotExplosiveLimit } from '../../../../src/lib/engine/physics/solvent/hot-explosive-limit';
import { ovenSolventLoad } from '../../../../src/lib/engine/physics/solvent/oven-solvent-load';
import { ovenVapourShare } from '../../../../src/lib/engine/physics/solvent/oven-vapour-share';
import { partTemperatureAfter } from '../../../../src/lib/engine/physics/heat/part-temperature-after';
import { radiantHeatUpTime } from '../../../../src/lib/engine/physics/heat/radiant-heat-up-time';
import { solventIntoOven } from '../../../../src/lib/engine/physics/solvent/solvent-into-oven';
import {
	celsius,
	cubicMetres,
	feetPerMinute,
	fraction,
	gramsPerMillilitre,
	kilograms,
	micrometres,
	minutes,
	percent,
	squareMetres
} from '../../../../src/lib/engine/units/construct';
import type {
	HeatTransfer,
	KilogramPerCubicMetre,
	Metre,
	MolarEnergy,
	MolarMass,
	SpecificHeat
} from '../../../../src/lib/engine/units/dimension';

it.each([
	[20, 50, 9.3],
	[20, 70, 14.4],
	[22, 60, 13.9],
	[25, 60, 16.7],
	[30, 80, 26.2]
])('air of %d °C and %d %% has its dew point at %d °C', (degrees, humidity, expected) => {
	expect(dewPoint.at({ air: celsius(degrees), humidity: percent(humidity) }) - 273.15).toBeCloseTo(
		expected,
		1
	);
});

const PANEL = {
	density: 2770 as KilogramPerCubicMetre,
	heat: 875 as SpecificHeat,
	depth: 0.0015 as Metre,
	heatTransfer: 40 as HeatTransfer,
	start: celsius(25),
	air: celsius(175)
};

describe('heat-up', () => {
	it('without radiation takes as long as by convection alone', () => {
		const target = celsius(150);
		expect(heatUpTime.at({ ...PANEL, target })).toBeCloseTo(162.9, 1);
		expect(radiantHeatUpTime.at({ ...PANEL, target, emissivity: fraction(0) })).toBeCloseTo(
			heatUpTime.at({ ...PANEL, target }),
			6
		);
	});

	it('is faster with radiation, slower for a thicker part', () => {
		const target = celsius(150);
		const bare = radiantHeatUpTime.at({ ...PANEL, target, emissivity: fraction(0.1) });
		expect(radiantHeatUpTime.at({ ...PANEL, target, emissivity: fraction(0.9) })).toBeLessThan(bare);
		const thick = { ...PANEL, depth: 0.003 as Metre, target, emissivity: fraction(0.1) };
		expect(radiantHeatUpTime.at(thick)).toBeCloseTo(2 * bare, 6);
	});

	it('refuses a target the air cannot bring', () => {
		for (const target of [celsius(175), celsius(180), celsius(20)])
			expect(() => heatUpTime.at({ ...PANEL, target })).toThrow('heat-up');
	});

	it('read backwards gives the temperature again', () => {
		fc.assert(
			fc.property(fc.double({ min: 26, max: 174, noNaN: true }), (degrees) => {
				const oven = { ...PANEL, emissivity: fraction(0.8) };
				const spent = radiantHeatUpTime.at({ ...oven, target: celsius(degrees) });
				expect(partTemperatureAfter.at({ ...oven, spent })).toBeCloseTo(celsius(degrees), 6);
			}),
			{ numRuns: 50 }
		);
	});

	it('five minutes from the closing of the door leave 177 s of a five-minute cure', () => {
		const toCure = radiantHeatUpTime.at({ ...PANEL, target: celsius(150), emissivity: fraction(0.8) });
		expect(300 - toCure).toBeCloseTo(177, 0);
	});

	it('takes half the thickness of a plate from its weight', () => {
		const plate = {
			mass: kilograms(2.7 * 0.1 * 0.1 * 6),
			density: 2700 as KilogramPerCubicMetre,
			area: squareMetres(0.02)
		};
		expect(bodyDepth.at(plate)).toBeCloseTo(0.003, 12);
	});
});

it.each([
	[50, 1.41],
	[67, 1.59],
	[100, 1.99]
])('ten degrees below 150 °C cost, at %d kJ/mol, %d times the cure', (energy, times) => {
	const cure = {
		stated: minutes(60),
		statedAt: celsius(150),
		at: celsius(140),
		activation: (energy * 1e3) as MolarEnergy
	};
	expect(cureEquivalence.at(cure) / 3600).toBeCloseTo(times, 2);
});

describe('solvent in the oven', () => {
	const toluene = {
		density: gramsPerMillilitre(0.867),
		molarMass: 0.09214 as MolarMass,
		limit: percent(1.1)
	};
	const oven = { ...toluene, oven: cubicMetres(2), gas: celsius(20) };

	it('24 mL of toluene bring 2 m³ to a quarter of the limit', () => {
		expect(ovenSolventLoad.at({ ...oven, share: fraction(0.25) }) * 1e6).toBeCloseTo(24, 0);
	});

	it('load and share undo each other', () => {
		const liquid = ovenSolventLoad.at({ ...oven, share: fraction(0.25) });
		expect(ovenVapourShare.at({ ...oven, liquid })).toBeCloseTo(0.25, 12);
	});

	it('a hot oven takes less, and its limit is lower', () => {
		const hot = celsius(150);
		const cold = ovenSolventLoad.at({ ...oven, share: fraction(0.25) });
		const limit = hotExplosiveLimit.at({ limit: toluene.limit, gas: hot });
		expect(limit).toBeCloseTo(0.0077, 12);
		expect(hotExplosiveLimit.at({ limit: toluene.limit, gas: celsius(120) })).toBe(toluene.limit);
		expect(ovenSolventLoad.at({ ...oven, gas: hot, limit, share: fraction(0.25) }) / cold).toBeCloseTo(
			(0.7 * 293.15) / 423.15,
			9
		);
	});

	it('comes from the wet film that is left', () => {
		const load = { area: squareMetres(1.5), wet: micrometres(80), share: percent(25) };
		expect(solventIntoOven.at(load) * 1e6).toBeCloseTo(30, 9);
	});
});

it('a face of 8 by 7 ft at 100 ft/min moves 5600 ft³/min', () => {
	const booth = { velocity: feetPerMinute(100), face: squareMetres(56 * 0.09290304) };
	expect(boothFlow.at(booth)).toBeCloseTo(2.643, 3);
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { atmosphericDewPoint } from '../../../../src/lib/engine/physics/humidity/atmospheric-dew-point';
import { pressureDewPoint } from '../../../../src/lib/engine/physics/humidity/pressure-dew-point';
import { saturationPressure } from '../../../../src/lib/engine/physics/humidity/saturation-pressure';
import { saturationPressureIce } from '../../../../src/lib/engine/physics/humidity/saturation-pressure-ice';
import { saturationTemperature } from '../../../../src/lib/engine/physics/humidity/saturation-temperature';
import { vapourPressure } from '../../../../src/lib/engine/physics/humidity/vapour-pressure';
import { bar, celsius, kelvin } from '../../../../src/lib/engine/units/construct';

const TRIPLE = celsius(0.01);

describe('vapour over ice and over water', () => {
	it('meets at the triple point, 611.657 Pa', () => {
		expect(saturationPressureIce.at({ air: TRIPLE })).toBeCloseTo(611.657, 1);
		expect(saturationPressureIce.at({ air: TRIPLE }) / saturationPressure.at({ air: TRIPLE })).toBeCloseTo(
			1,
			4
		);
	});

	it('is taken over ice below that point and over water from it on', () => {
		expect(vapourPressure.at({ dew: celsius(-10) })).toBe(saturationPressureIce.at({ air: celsius(-10) }));
		expect(vapourPressure.at({ dew: TRIPLE })).toBe(saturationPressure.at({ air: TRIPLE }));
		expect(vapourPressure.at({ dew: celsius(10) })).toBe(saturationPressure.at({ air: celsius(10) }));
	});

	it('finds the dew point back, from one end of the range to the other', () => {
		fc.assert(
			fc.property(fc.double({ min: -99.9, max: 199.9, noNaN: true }), (degrees) => {
				const vapour = vapourPressure.at({ dew: celsius(degrees) });
				expect(saturationTemperature.at({ vapour })).toBeCloseTo(celsius(degrees), 3);
			})
		);
	});
});

describe('dew points in a line and in the shop', () => {
	const inLine = (degrees: number, gauge: number) =>
		pressureDewPoint.at({ dew: celsius(degrees), gauge: bar(gauge) });
	const inShop = (degrees: number, gauge: number) =>
		atmosphericDewPoint.at({ dew: celsius(degrees), gauge: bar(gauge) });

	it('are the same without pressure', () => {
		for (const degrees of [-60, -5, 12, 38]) {
			expect(inLine(degrees, 0)).toBeCloseTo(celsius(degrees), 6);
			expect(inShop(degrees, 0)).toBeCloseTo(celsius(degrees), 6);
		}
	});

	it('part with pressure: wetter in the line, drier in the shop', () => {
		for (const gauge of [1, 4, 7, 12]) {
			expect(inLine(10, gauge + 1)).toBeGreaterThan(inLine(10, gauge));
			expect(inShop(10, gauge + 1)).toBeLessThan(inShop(10, gauge));
		}
	});

	it('undo one another', () => {
		fc.assert(
			fc.property(
				fc.double({ min: -60, max: 8, noNaN: true }),
				fc.double({ min: 0, max: 12, noNaN: true }),
				(degrees, gauge) => {
					const back = inShop(inLine(degrees, gauge) - 273.15, gauge);
					expect(back).toBeCloseTo(celsius(degrees), 3);
				}
			),
			{ examples: [[0, 7]] }
		);
	});

	it('a dryer for 3 °C at 7 bar blows air of some −21 °C; its label does not say so', () => {
		const blown = kelvin(inShop(3, 7) - 273.15);
		expect(blown).toBeGreaterThan(-22);
		expect(blown).toBeLessThan(-20);
	});
});

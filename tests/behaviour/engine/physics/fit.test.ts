import { describe, expect, it } from 'vitest';
import { clearanceLeft } from '../../../../src/lib/engine/physics/film/clearance-left';
import { fitGrowth } from '../../../../src/lib/engine/physics/film/fit-growth';
import { holeArea } from '../../../../src/lib/engine/physics/film/hole-area';
import { partArea } from '../../../../src/lib/engine/physics/film/part-area';
import { count, metres, micrometres, millimetres } from '../../../../src/lib/engine/units/construct';
import type { Radian } from '../../../../src/lib/engine/units/dimension';

const µm = (value: number) => value * 1e6;
const dry = micrometres(25);
const flanks = (degrees: number) =>
	µm(fitGrowth.flanks.at({ dry, angle: ((degrees * Math.PI) / 180) as Radian }));

describe('fit growth', () => {
	it('is two films on a diameter, outward on a shaft and inward in a bore', () => {
		expect(µm(fitGrowth.diameter.at({ dry }))).toBeCloseTo(50, 9);
		expect(µm(fitGrowth.bore.at({ dry }))).toBeCloseTo(-50, 9);
	});

	it('is four on the pitch diameter of a 60° thread, more on sharper ones, and two on a flat', () => {
		expect(µm(fitGrowth.thread.at({ dry }))).toBeCloseTo(100, 9);
		expect(flanks(60)).toBeCloseTo(100, 9);
		expect(flanks(55)).toBeCloseTo(50 / Math.sin((27.5 * Math.PI) / 180), 9);
		expect(flanks(55)).toBeGreaterThan(flanks(60));
		expect(flanks(120)).toBeCloseTo(100 / Math.sqrt(3), 9);
	});

	it('takes from the clearance what both films lay on it', () => {
		const fit = { bore: millimetres(10.1), shaft: millimetres(10) };
		const left = (boreDry: number, shaftDry: number) =>
			µm(clearanceLeft.at({ ...fit, boreDry: micrometres(boreDry), shaftDry: micrometres(shaftDry) }));
		expect(left(0, 0)).toBeCloseTo(100, 6);
		expect(left(0, 20)).toBeCloseTo(60, 6);
		expect(left(15, 20)).toBeCloseTo(30, 6);
		expect(left(30, 30)).toBeCloseTo(-20, 6);
	});
});

it('a tube twice as long has twice the area, outside and inside', () => {
	const tube = { outer: metres(0.05), inner: metres(0.04), length: metres(2) };
	expect(partArea.tube.at({ ...tube, sides: count(1) })).toBeCloseTo(0.1 * Math.PI, 12);
	expect(partArea.tube.at({ ...tube, sides: count(2) })).toBeCloseTo(0.18 * Math.PI, 12);
});

describe('holes', () => {
	const plate = { length: metres(0.3), width: metres(0.2) };

	it('take a disc off each side and add their wall', () => {
		const hole = { holes: count(4), diameter: millimetres(10), thickness: millimetres(3) };
		const disc = (Math.PI * 0.01 ** 2) / 4;
		const wall = Math.PI * 0.01 * 0.003;
		expect(holeArea.at({ ...hole, sides: count(2) })).toBeCloseTo(4 * (wall - 2 * disc), 15);
		expect(holeArea.at({ ...hole, sides: count(1) })).toBeCloseTo(4 * (wall - disc), 15);
		expect(holeArea.at({ ...hole, holes: count(0), sides: count(2) })).toBeCloseTo(0, 15);
	});

	it('add to a thick sheet what they take from a thin one', () => {
		const change = (thickness: number) =>
			holeArea.at({
				holes: count(1),
				diameter: millimetres(10),
				thickness: millimetres(thickness),
				sides: count(2)
			});
		expect(change(4)).toBeLessThan(0);
		expect(change(5)).toBeCloseTo(0, 15);
		expect(change(6)).toBeGreaterThan(0);
		expect(partArea.plate.at({ ...plate, sides: count(2) }) + change(4)).toBeLessThan(0.12);
	});
});

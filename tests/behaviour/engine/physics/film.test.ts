import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { batchVolume } from '../../../../src/lib/engine/physics/film/batch-volume';
import { dryFilm } from '../../../../src/lib/engine/physics/film/dry-film';
import { filmFromMass } from '../../../../src/lib/engine/physics/film/film-from-mass';
import { filmPerPass } from '../../../../src/lib/engine/physics/spray/film-per-pass';
import { partArea } from '../../../../src/lib/engine/physics/film/part-area';
import { spreadingRate } from '../../../../src/lib/engine/physics/film/spreading-rate';
import { strokes } from '../../../../src/lib/engine/physics/spray/strokes';
import { wetFilm } from '../../../../src/lib/engine/physics/film/wet-film';
import {
	count,
	fraction,
	grams,
	gramsPerMillilitre,
	metres,
	metresPerSecond,
	micrometres,
	millimetres,
	percent,
	squareMetres
} from '../../../../src/lib/engine/units/construct';
import type { CubicMetrePerSecond } from '../../../../src/lib/engine/units/dimension';

const µm = (value: number) => value * 1e6;

describe('wet and dry film', () => {
	it.each([
		[20, 30, 0, 66.67],
		[25, 30, 0, 83.33],
		[25, 30, 10, 91.67],
		[100, 60, 10, 183.33]
	])('%d µm dry at %d %% solids with %d %% thinner is %d µm wet', (dry, solids, thinner, wet) => {
		const film = { dry: micrometres(dry), solids: percent(solids), thinner: percent(thinner) };
		expect(µm(wetFilm.at(film))).toBeCloseTo(wet, 2);
	});

	it('undo each other', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 1e-6, max: 1e-4, noNaN: true }),
				fc.double({ min: 0.05, max: 1, noNaN: true }),
				fc.double({ min: 0, max: 0.5, noNaN: true }),
				(thickness, vs, x) => {
					const mix = { solids: fraction(vs), thinner: fraction(x) };
					const wet = wetFilm.at({ ...mix, dry: metres(thickness) });
					expect(dryFilm.at({ ...mix, wet })).toBeCloseTo(thickness, 12);
				}
			)
		);
	});
});

describe('coverage', () => {
	it('and batch say the same', () => {
		const film = { dry: micrometres(20.32), solids: percent(30), transfer: percent(65) };
		const area = squareMetres(9.290304);
		expect(batchVolume.at({ ...film, area })).toBeCloseTo(area / spreadingRate.at(film), 12);
		expect(batchVolume.at({ ...film, area }) * 1e3).toBeCloseTo(0.968, 3);
	});
});

describe('part area', () => {
	const size = { length: metres(0.3), width: metres(0.2), height: metres(0.1) };

	it('counts the faces that are coated', () => {
		expect(partArea.plate.at({ ...size, sides: count(1) })).toBeCloseTo(0.06, 12);
		expect(partArea.plate.at({ ...size, sides: count(2) })).toBeCloseTo(0.12, 12);
		const box = { ...size, wall: metres(0.01) };
		expect(partArea.box.at({ ...box, sides: count(1) })).toBeCloseTo(0.06 + 0.06 + 0.04, 12);
		// inside 0.28 × 0.18 × 0.09
		expect(partArea.box.at({ ...box, sides: count(2) })).toBeCloseTo(0.16 + 0.0504 + 0.0828, 12);
		expect(
			partArea.bracket.at({ leg: metres(0.1), otherLeg: metres(0.05), width: metres(0.2), sides: count(2) })
		).toBeCloseTo(0.06, 12);
	});

	it('knows round shapes', () => {
		const tube = { outer: metres(0.05), inner: metres(0.04), length: metres(1) };
		expect(partArea.tube.at({ ...tube, sides: count(1) })).toBeCloseTo(0.15708, 5);
		expect(partArea.tube.at({ ...tube, sides: count(2) })).toBeCloseTo(0.28274, 5);
		expect(partArea.bar.at({ diameter: metres(0.02), length: metres(0.5), sides: count(2) })).toBeCloseTo(
			0.03204,
			5
		);
		const ring = { outer: metres(0.1), inner: metres(0.06), thickness: metres(0.01) };
		expect(partArea.ring.at({ ...ring, sides: count(2) })).toBeCloseTo(0.01508, 5);
	});
});

it('a foil that gained 0.30 g on 10 000 mm² carries 20 µm at 1.5 g/cm³', () => {
	const foil = { gain: grams(0.3), area: squareMetres(0.01), density: gramsPerMillilitre(1.5) };
	expect(µm(filmFromMass.at(foil))).toBeCloseTo(20, 9);
});

it('150 mL/min at 30 % solids, 60 % transfer, 0.5 m/s and 125 mm index lays 7.2 µm', () => {
	const pass = {
		flow: (150e-6 / 60) as CubicMetrePerSecond,
		solids: percent(30),
		transfer: percent(60),
		speed: metresPerSecond(0.5),
		index: millimetres(125)
	};
	expect(µm(filmPerPass.at(pass))).toBeCloseTo(7.2, 9);
});

it.each([
	[200, 250, 50, 1],
	[250, 250, 50, 1],
	[375, 250, 50, 2],
	[376, 250, 50, 3],
	[1000, 250, 50, 7]
])(
	'a face of %d mm under a fan of %d mm at %d %% overlap takes %d strokes',
	(width, fan, overlap, expected) => {
		const face = { width: millimetres(width), fan: millimetres(fan), overlap: percent(overlap) };
		expect(strokes.at(face)).toBe(expected);
	}
);

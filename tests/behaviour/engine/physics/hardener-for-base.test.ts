import { expect, test } from 'vitest';
import { hardenerForBase } from '../../../../src/lib/engine/physics/mixing/hardener-for-base';
import { mixSplit } from '../../../../src/lib/engine/physics/mixing/mix-split';
import { ratioByMass } from '../../../../src/lib/engine/physics/mixing/ratio-by-mass';
import { ratioByVolume } from '../../../../src/lib/engine/physics/mixing/ratio-by-volume';
import { grams, gramsPerMillilitre, millilitres, ratio } from '../../../../src/lib/engine/units/construct';

test.each([0.5, 4, 9, 25])('splitting a batch %s:1 and adding hardener to its base are one mix', (parts) => {
	const batch = { batch: millilitres(500), ratio: ratio(parts) };
	const base = mixSplit.volume.base.at(batch);
	expect(hardenerForBase.volume.at({ base, ratio: ratio(parts) })).toBeCloseTo(
		mixSplit.volume.hardener.at(batch),
		12
	);
});

test.each([0.5, 4, 25])('converting %s:1 to weight and back changes nothing', (parts) => {
	const densities = { densityA: gramsPerMillilitre(1.25), densityB: gramsPerMillilitre(1.05) };
	const byMass = ratioByMass.at({ byVolume: ratio(parts), ...densities });
	expect(ratioByVolume.at({ byMass, ...densities })).toBeCloseTo(parts, 12);
});

test('a ratio of nothing is refused', () => {
	expect(() => hardenerForBase.mass.at({ base: grams(500), ratio: ratio(0) })).toThrow(RangeError);
});

import { hearingProtector, RATING_KEPT } from '../../src/lib/engine/physics/exposure/hearing-protector';
import { count, fraction } from '../../src/lib/engine/units/construct';
import type { SoundLevelC } from '../../src/lib/engine/units/dimension';
import { published } from './published';

/** Share of a rating of 30 that is taken off a level of 100 dB(C). */
const kept = (kind: keyof typeof RATING_KEPT) => () => {
	const worn = { level: 100 as SoundLevelC, rating: count(30), kept: fraction(RATING_KEPT[kind]) };
	return (100 - hearingProtector.cByKind.at(worn)) / 30;
};

export default published('niosh-98-126', 'share of the rating that counts, by kind of protector', {
	of: ['protected-level-c-by-kind'],
	unit: '1',
	read: 'factors as quoted in the help page of an instrument seller',
	within: { absolute: 1e-9, because: 'exact as printed' },
	rows: [
		{ where: 'earmuffs', expected: 0.75, actual: kept('muff') },
		{ where: 'foam earplugs', expected: 0.5, actual: kept('formable-plug') },
		{ where: 'other earplugs', expected: 0.3, actual: kept('other-plug') }
	]
});

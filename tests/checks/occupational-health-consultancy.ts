import { hearingProtector } from '../../src/lib/engine/physics/exposure/hearing-protector';
import { count } from '../../src/lib/engine/units/construct';
import type { SoundLevelC } from '../../src/lib/engine/units/dimension';
import { published } from './published';

const at = (where: string, level: number, rating: number, expected: number) => ({
	where,
	expected,
	actual: () => hearingProtector.c.at({ level: level as SoundLevelC, rating: count(rating) })
});

export default published('occupational-health-consultancy', 'level under plugs from a C-weighted average', {
	of: ['protected-level-c'],
	unit: 'dB(A)',
	read: 'page with worked examples by 29 CFR 1910.95, Appendix B',
	within: { absolute: 1e-9, because: 'whole decibels' },
	rows: [
		at('108 dB(C), plug rated 32', 108, 32, 76),
		at('110 dB(C), plug rated 29 under a muff, which adds 5', 110, 34, 76)
	]
});

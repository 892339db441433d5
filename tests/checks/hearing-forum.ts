import { hearingProtector } from '../../src/lib/engine/physics/exposure/hearing-protector';
import { count, decibels } from '../../src/lib/engine/units/construct';
import type { SoundLevelC } from '../../src/lib/engine/units/dimension';
import { published } from './published';

const rating = count(25);
const { a, aHalved, c, cHalved } = hearingProtector;

export default published('hearing-forum', 'a protector rated 25, as the law and as its inspectors count it', {
	of: ['protected-level-a', 'protected-level-a-halved', 'protected-level-c', 'protected-level-c-halved'],
	unit: 'dB(A)',
	read: 'page with worked examples, citing the OSHA field manual',
	within: { absolute: 1e-9, because: 'whole and half decibels' },
	rows: [
		{ where: '100 dB(A)', expected: 82, actual: () => a.at({ level: decibels(100), rating }) },
		{ where: '100 dB(A), halved', expected: 91, actual: () => aHalved.at({ level: decibels(100), rating }) },
		{ where: '98 dB(A), halved', expected: 89, actual: () => aHalved.at({ level: decibels(98), rating }) },
		{
			where: '100 dB, unweighted rating',
			expected: 75,
			actual: () => c.at({ level: 100 as SoundLevelC, rating })
		},
		{
			where: '98 dB(C), halved',
			expected: 85.5,
			actual: () => cHalved.at({ level: 98 as SoundLevelC, rating })
		}
	]
});

import { expectedRight } from '$lib/learning';
import { published } from './published';

/** Chess counts in steps of which 400 are a factor of ten in the odds; here the unit is the logit. */
const logits = (rating: number) => (rating * Math.LN10) / 400;

const PLAYER = 1613;
const printed = [
	[1609, 0.51],
	[1477, 0.69],
	[1388, 0.79],
	[1586, 0.54],
	[1720, 0.35]
] as const;

export default published('elo-encyclopaedia', 'five games of one player: what was expected of each', {
	of: ['practice'],
	unit: 'share',
	within: { absolute: 0.005, because: 'two printed digits' },
	read: 'the article as copied, with its address, in public repositories',
	rows: printed.map(([opponent, expected]) => ({
		where: `${PLAYER} against ${opponent}`,
		expected,
		actual: () => expectedRight(logits(PLAYER), logits(opponent))
	}))
});

import { cite } from '../../sources/provenance';
import type { CubicMetrePerSecond, Fraction } from '../../units/dimension';
import { deliveryNeeded } from './delivery-needed';
import { defineProcedure } from '../procedure';

type Users = {
	/** Free air of each user while it runs. */
	readonly demand: readonly CubicMetrePerSecond[];
	/** Share of the time each of them runs, in the same order. */
	readonly duty: readonly Fraction[];
	readonly leak: Fraction;
	readonly reserve: Fraction;
};

/**
 * Free air that a compressor has to deliver for several users together, each for its share of the time. Two users that
 * always run at once are not evened out by this: give them a duty of 1. Throws where demands and duties do not pair up.
 */
export const compressorDelivery = defineProcedure<Users, CubicMetrePerSecond>({
	id: 'compressor-delivery',
	title: { en: 'Compressor delivery for several users', es: 'Caudal del compresor para varios consumos' },
	equation: 'Q = Σ(q · duty) / (1 − leak) · (1 + reserve)',
	source: cite(
		'compressor-sizing-guide',
		'example: a body shop',
		{ read: 'rules and worked example' },
		'common-practice'
	),
	inputs: { demand: 'flow', duty: 'fraction', leak: 'fraction', reserve: 'fraction' },
	validFor: { demand: [0, 10], duty: [0, 1], leak: [0, 0.6], reserve: [0, 1] },
	compute({ demand, duty, leak, reserve }) {
		if (demand.length !== duty.length)
			throw new RangeError(
				`compressor-delivery: ${duty.length} duties for ${demand.length} users; allowed is one for each`
			);
		return demand.reduce(
			(sum, one, at) =>
				(sum + deliveryNeeded.at({ demand: one, duty: duty[at]!, leak, reserve })) as typeof one,
			0 as CubicMetrePerSecond
		);
	}
});

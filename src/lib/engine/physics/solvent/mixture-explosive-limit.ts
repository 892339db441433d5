import { cite } from '../../sources/provenance';
import type { Fraction } from '../../units/dimension';
import { refuseUnpaired } from '../paired';
import { defineProcedure } from '../procedure';
import { EXPLOSIVE_LIMIT_RANGE } from './vapour-expansion';

const id = 'mixture-explosive-limit';

/**
 * Lower explosive limit of mixed solvent vapours by Le Chatelier's rule, from how much of each vapour there is beside the
 * others (any scale, without the air). Shares of vapour, not of liquid: the more volatile solvent has more of it. Holds
 * for vapours that burn alike, as these solvents do; where in doubt take the lowest limit of them all.
 */
export const mixtureExplosiveLimit = defineProcedure<
	{ readonly shares: readonly Fraction[]; readonly limits: readonly Fraction[] },
	Fraction
>({
	id,
	title: {
		en: 'Lower explosive limit of a mixture',
		es: 'Límite inferior de explosividad de una mezcla'
	},
	equation: '1/LEL = y₁/LEL₁ + y₂/LEL₂ + …, y₁ + y₂ + … = 1',
	source: cite('crowl-safety', 'ch. 6, eq. 6-2', {
		read: 'rule and example as held in an open chemical-properties library'
	}),
	inputs: { shares: 'fraction', limits: 'fraction' },
	validFor: { shares: [0, 1], limits: EXPLOSIVE_LIMIT_RANGE },
	compute({ shares, limits }) {
		refuseUnpaired(id, { shares, limits });
		const vapour = shares.reduce((sum, share) => sum + share, 0);
		if (vapour === 0) throw new RangeError(`${id}: shares hold no vapour at all`);
		return (vapour / shares.reduce((sum, share, solvent) => sum + share / limits[solvent]!, 0)) as Fraction;
	}
});

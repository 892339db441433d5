import { constant, workedOut, type Traced } from '../../plan/trace';
import { arithmetic } from '../../sources/provenance';
import { fraction } from '../../units/construct';
import { amount, windowBy, type PutIn } from '../put-in';

const LABEL = {
	en: 'Thinner beyond what the sheet permits',
	es: 'Diluyente por encima de lo que permite la hoja'
};

/** Paint with no more thinner in it than the sheet was written for. */
export const NO_SURPLUS = constant(
	'thinner-share',
	'fraction',
	fraction(0),
	arithmetic('as the question says'),
	LABEL
);

/**
 * Thinner that would be in the paint beyond the sheet's most. The sheet is filled in for unthinned paint and asks for
 * the most thinner, not for what goes in, so only what is beyond it tells.
 */
export function surplusThinner(given: PutIn): Traced<'fraction'> {
	const set = amount(given, 'thinner-share', 'fraction');
	const most = windowBy(given, 'thinner-share', 'fraction')?.max;
	if (!set || !most) return NO_SURPLUS;
	return workedOut('thinner-share', 'fraction', Math.max(0, set.value - most.value), LABEL, { set, most });
}

import { ruleById } from '../rules';
import type { Direction } from './causes';
import type { DefectId } from './defects';
import { isThisWay } from './fit';

const DIRECTIONS = ['low', 'high', 'wrong'] as const;

/** Defects that come out where a rule is off this way, the first named first; none where it hurts no film. */
export function breaksInto(ruleId: string, off: Direction): readonly DefectId[] {
	const rule = ruleById(ruleId);
	const ways = DIRECTIONS.filter((one) => isThisWay(rule, off, one));
	return [...new Set(ways.flatMap((one) => rule.breaks[one] ?? []))];
}

import { RULES } from '../rules';
import type { Breaks, Rule } from '../rules/rule';
import type { DefectId } from './defects';

/** Which way a rule was broken. */
export type Direction = keyof Breaks;

const DIRECTIONS = ['low', 'high', 'wrong'] as const satisfies readonly Direction[];

/** Every way the rules say this defect comes about: their own `breaks`, read backwards, in working order. */
export const causesOf = (defect: DefectId): readonly { rule: Rule; direction: Direction }[] =>
	RULES.flatMap((rule) =>
		DIRECTIONS.filter((direction) => rule.breaks[direction]?.includes(defect)).map((direction) => ({
			rule,
			direction
		}))
	);

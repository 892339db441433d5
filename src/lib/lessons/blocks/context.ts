import { createContext } from 'svelte';
import type { CheckView, DefectView, LessonView, RuleView, SumView } from '../lesson-view';

const [get, set] = createContext<() => LessonView>();

/** Hands the blocks of a lesson their data; called by the page that shows it, with a function so that it can change. */
export const setLesson = set;

/** The data of the lesson around this block, as a function. Throws outside a lesson. */
export const lesson = get;

/** A rule of the lesson. Throws for an unknown id: lessons are not type-checked, and a lesson without its limit is wrong. */
export function ruleIn({ rules }: LessonView, id: string): RuleView {
	const rule = rules[id];
	if (!rule) throw new RangeError(`lesson: no rule '${id}'`);
	return rule;
}

/** A check of the lesson. Throws for an unknown id. */
export function checkIn({ checks }: LessonView, id: string): CheckView {
	const check = checks[id];
	if (!check) throw new RangeError(`lesson: no check '${id}' in its checks.ts`);
	return check;
}

/** A sum of the lesson. Throws for an unknown id. */
export function sumIn({ sums }: LessonView, id: string): SumView {
	const sum = sums[id];
	if (!sum) throw new RangeError(`lesson: no sum '${id}' in its sums.ts`);
	return sum;
}

/** A defect of the catalogue. Throws for an unknown id, and in a lesson that is not given the catalogue. */
export function defectIn({ defects }: LessonView, id: string): DefectView {
	const defect = defects[id];
	if (!defect) throw new RangeError(`lesson: no defect '${id}'`);
	return defect;
}

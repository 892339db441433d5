import { lessons } from '$lib/i18n';
import type { LessonView, LimitLine } from '../lesson-view';
import { ruleIn } from './context';

/**
 * What a rule expects on an example job: on the one named, or on the first that calls for the rule. Undefined where
 * that job does not call for it in this shop: another job's number is never shown in its place.
 */
export function lineOf(view: LessonView, id: string, example?: string): LimitLine | undefined {
	const rule = ruleIn(view, id);
	return example === undefined ? rule.lines[0] : rule.on[example];
}

/**
 * What a rule expects on one example job, as text for a drawing or a sentence.
 * @param example id of an example job, written out between quotes; the first that calls for the rule if left out
 */
export const limitOf = (view: LessonView, rule: string, example?: string): string =>
	lineOf(view, rule, example)?.value ?? lessons[view.lang].notCalledForShort;

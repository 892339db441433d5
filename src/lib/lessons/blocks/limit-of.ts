import { lessons } from '$lib/i18n';
import type { LessonView } from '../lesson-view';
import { ruleIn } from './context';

/**
 * What a rule expects on one example job, as text for a drawing or a sentence.
 * @param example id of an example job; the first that calls for the rule if left out or if this shop does not show it
 */
export function limitOf(view: LessonView, rule: string, example?: string): string {
	const { lines } = ruleIn(view, rule);
	const line = lines.find((one) => one.example === example) ?? lines[0];
	return line ? line.value : lessons[view.lang].notCalledForShort;
}

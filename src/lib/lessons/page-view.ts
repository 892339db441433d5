import type { Shop } from '$lib/engine';
import type { Reader } from '$lib/paper';
import type { LessonCheck } from './check';
import { checkView, UNANSWERED, type CheckResult } from './check-view';
import { defectViews } from './defect-view';
import type { Lesson } from './lesson';
import type { CheckView, LessonView } from './lesson-view';
import { ruleView } from './rule-view';
import { exampleOf, shopExamples } from './shop-examples';
import { sumView } from './sum-view';
import { valuesView } from './values-view';

/** The lesson that shows the catalogue of defects; the others are not sent it. */
const CATALOGUE_IN = 'defects';

/** One check after it was answered. */
export const answeredView = (
	check: LessonCheck,
	result: CheckResult,
	shop: Shop,
	reader: Reader
): CheckView => checkView(check, exampleOf(check, shop), result, false, shop, reader);

/**
 * Everything the blocks of a lesson show, worked out for this shop and this reader.
 * @param settled ids of the checks answered right in this go at the lesson
 */
export function lessonView(
	lesson: Lesson,
	shop: Shop,
	reader: Reader,
	settled: readonly string[] = []
): LessonView {
	const { names } = lesson;
	return {
		lang: reader.lang,
		rules: Object.fromEntries(
			names.rules.map((id) => [id, ruleView(id, shopExamples(id, shop), names.examples, reader)])
		),
		checks: Object.fromEntries(
			lesson.checks.map((check) => [
				check.id,
				checkView(check, exampleOf(check, shop), UNANSWERED, settled.includes(check.id), shop, reader)
			])
		),
		values: Object.fromEntries(names.values.map((start) => [start, valuesView(start, shop, reader)])),
		sums: Object.fromEntries(lesson.sums.map((sum) => [sum.id, sumView(sum, shop, reader)])),
		defects: lesson.slug === CATALOGUE_IN ? defectViews(reader.lang) : {}
	};
}

import type { Lang } from '$lib/i18n';
import { commonestForm, formStatistics, itemLimits, itemsNeeded, type AnsweredSheet } from '$lib/learning';
import { ruleLine } from '../incidents/rule-line';

/** The form of a template that was met most often, as a whole; or why nothing can be said of it. */
export function formView(sheets: readonly AnsweredSheet[], lang: Lang) {
	const found = formStatistics(commonestForm(sheets));
	if ('refused' in found) return found;
	const { n, items, mean, sem, alpha, alphaWithout, indicative } = found;
	return {
		n,
		rules: items.length,
		mean,
		sem,
		alpha,
		indicative,
		wanted: itemLimits.soundForm,
		needed: alpha < itemLimits.soundForm ? itemsNeeded(items.length, alpha, itemLimits.soundForm) : undefined,
		betterWithout: items
			.filter((id) => (alphaWithout.get(id) ?? -Infinity) > alpha)
			.map((id) => ruleLine(id, lang))
	};
}

export type FormView = ReturnType<typeof formView>;

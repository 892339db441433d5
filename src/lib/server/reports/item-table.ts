import { DRILL_KINDS } from '$lib/drills';
import { reports, say, terms, type Lang } from '$lib/i18n';
import { itemStatistics } from '$lib/learning';
import type { FirstAttempt } from '$lib/records';
import { ruleLine } from '../incidents/rule-line';
import { formView } from './form-view';
import { templatesOf, type Template } from './templates';
import { inWorkingOrder } from './working-order';

const titleOf = ({ kind, about }: Template, lang: Lang) => {
	const words = reports[lang];
	const short = DRILL_KINDS.find(({ id }) => id === kind);
	if (short) return say(short.title, lang);
	// a kind of another version of the program keeps its id
	const name = Object.entries(words.kinds).find(([id]) => id === kind)?.[1] ?? kind;
	return words.template(name, about === 'whole' ? words.wholeTicket : terms[lang].station[about]);
};

/** How each rule fared on the tickets of each template, by the numbers there are enough attempts for. */
export const itemTable = (attempts: readonly FirstAttempt[], lang: Lang) =>
	templatesOf(attempts).map((template) => {
		const sheets = template.attempts.map(({ kept }) => kept);
		return {
			id: `${template.kind}-${template.about}`,
			title: titleOf(template, lang),
			tickets: sheets.length,
			people: new Set(template.attempts.map(({ person }) => person)).size,
			rules: inWorkingOrder(sheets.flatMap((kept) => [...kept.keys()])).map((id) => ({
				...ruleLine(id, lang),
				statistics: itemStatistics(sheets, id)
			})),
			form: formView(sheets, lang)
		};
	});

export type ItemTemplate = ReturnType<typeof itemTable>[number];

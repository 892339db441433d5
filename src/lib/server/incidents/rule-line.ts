import { RULES } from '$lib/engine';
import { say, type Lang } from '$lib/i18n';

/** Title and lesson of a rule; a record of another engine version may name one that is gone. */
export function ruleLine(id: string, lang: Lang) {
	const rule = RULES.find((one) => one.id === id);
	return rule
		? { id, title: say(rule.title, lang), lesson: `/${lang}/lessons/${rule.lesson}` }
		: { id, title: id, lesson: null };
}

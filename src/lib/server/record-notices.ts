import { recordState, type Lang } from '$lib/i18n';
import type { App } from './app';

/** What every page says while something is or was wrong with the record itself. */
export const recordNotices = (
	{ journal, repairedBytes }: Pick<App, 'journal' | 'repairedBytes'>,
	lang: Lang
): { tone: 'refused' | 'info'; text: string }[] => {
	const words = recordState[lang];
	return [
		...(journal.fault ? [{ tone: 'refused' as const, text: words.fault(journal.fault.line) }] : []),
		...(repairedBytes > 0 ? [{ tone: 'info' as const, text: words.repaired }] : [])
	];
};

import { format } from './format';
import type { Lang } from './lang';
import { refusals } from './messages/refusals';

type Refusal = {
	readonly code: keyof (typeof refusals)['en']['code'];
	readonly detail?: readonly string[] | undefined;
};

/** A day, a known word, or what somebody typed themselves. */
function detailText(detail: string, lang: Lang): string {
	if (/^\d{4}-\d{2}-\d{2}$/.test(detail)) return format.date(detail, lang);
	const words: Readonly<Record<string, string>> = refusals[lang].detail;
	return words[detail] ?? detail;
}

/** Why the record refused, as one sentence. A code without words does not compile where it is passed in. */
export function refusalText({ code, detail = [] }: Refusal, lang: Lang): string {
	const words = refusals[lang].code[code];
	if (typeof words === 'string') return words;
	return words(
		format.list(
			detail.map((each) => detailText(each, lang)),
			lang
		)
	);
}

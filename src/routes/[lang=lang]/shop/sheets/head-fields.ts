import { sheets, shopSheets, type Lang } from '$lib/i18n';
import type { OptionView } from '$lib/ui';

type Offered = Readonly<
	Record<'families' | 'bases' | 'thinners' | 'cups' | 'hazards', readonly OptionView[]>
>;

/** What a sheet states that is no number: the fields of the form with what was entered, in order. */
export function headFields(
	offered: Offered,
	text: (name: string) => string,
	hazards: readonly string[],
	error: (name: string) => string | undefined,
	lang: Lang
) {
	const [words, names] = [shopSheets[lang], sheets[lang]];
	const asked = (name: string, label: string, hint?: string) => ({
		...{ id: name, name, label },
		...(hint ? { hint } : {}),
		...(error(name) ? { error: error(name) } : {})
	});
	const choice = (name: string, label: string, options: readonly OptionView[], hint?: string) =>
		({ ...asked(name, label, hint), kind: 'choice', options, value: text(name) }) as const;
	const line = (name: string, label: string, hint: string) =>
		({ ...asked(name, label, hint), kind: 'text', value: text(name) }) as const;
	const yesNo = [
		{ id: 'yes', label: names.yes },
		{ id: 'no', label: names.no }
	];
	return [
		line('title', words.titleOf, words.titleHint),
		choice('family', names.family, offered.families, words.familyHint),
		choice('basis', names.basis, offered.bases),
		choice('thinner', names.thinner, offered.thinners),
		choice('cup', names.cup, offered.cups),
		line('rubSolvent', words.rubSolvent, words.rubSolventHint),
		{
			...asked('hazards', names.hazards),
			...({ kind: 'choices', options: offered.hazards, value: hazards } as const)
		},
		choice('filled', names.filled, yesNo)
	];
}

export type HeadField = ReturnType<typeof headFields>[number];

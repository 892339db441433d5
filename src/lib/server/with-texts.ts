import type { Lang } from '$lib/i18n';
import type { Outcome, TextRef } from '$lib/records';
import type { App } from './app';

/**
 * Keeps names and free texts for an act and takes them out again if it is not done.
 * @param texts by field; an empty one is not kept and its reference is null
 * @param lang the language they were typed in
 * @param act does the act with the references, which is all the journal may hold of them
 */
export const withTexts = async <Field extends string>(
	{ texts: store }: Pick<App, 'texts'>,
	texts: Readonly<Record<Field, string>>,
	lang: Lang,
	act: (refs: Record<Field, TextRef | null>) => Promise<Outcome>
): Promise<Outcome> => {
	const refs: Partial<Record<Field, TextRef | null>> = {};
	const dropAll = () =>
		store.drop(
			Object.values<TextRef | null>(refs as Record<Field, TextRef | null>).flatMap((ref) => ref?.text ?? [])
		);
	try {
		for (const field of Object.keys(texts) as Field[]) {
			const text = texts[field].trim();
			refs[field] = text ? await store.put(text, lang) : null;
		}
		const outcome = await act(refs as Record<Field, TextRef | null>);
		if (!outcome.ok) await dropAll();
		return outcome;
	} catch (error) {
		await dropAll();
		throw error;
	}
};

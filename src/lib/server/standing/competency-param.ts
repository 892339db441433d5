import { error } from '@sveltejs/kit';
import { noPage, type Lang } from '$lib/i18n';
import { competencies, type CompetencyId } from '$lib/learning';

/**
 * A competency named in an address.
 * @throws HttpError 404 for any other word
 */
export function competencyIn(word: string, lang: Lang): CompetencyId {
	const found = competencies.find(({ id }) => id === word);
	if (!found) error(404, noPage[lang].problem[404].title);
	return found.id;
}

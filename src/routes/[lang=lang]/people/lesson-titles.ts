import type { Lang } from '$lib/i18n';
import { LESSONS } from '$lib/lessons';

/** Titles by address, for pages that link to lessons. */
export const lessonTitles = (lang: Lang): Record<string, string> =>
	Object.fromEntries(LESSONS.map(({ slug, head }) => [slug, head[lang].title]));

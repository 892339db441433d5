import type { Lang } from './lang';

/** The wording of a text in one language. The parameter's type makes a missing language a compile error. */
export const say = (text: { readonly en: string; readonly es: string }, lang: Lang): string => text[lang];

/** The languages every text exists in. */
export const LANGS = ['en', 'es'] as const;

export type Lang = (typeof LANGS)[number];

/** True for a language code this shop's screens exist in. */
export const isLang = (value: string): value is Lang => (LANGS as readonly string[]).includes(value);

/** The language to switch to. */
export const otherLang = (lang: Lang): Lang => (lang === 'en' ? 'es' : 'en');

import { isLang } from '$lib/i18n';

/** Which languages exist in a URL. */
export const match = isLang;

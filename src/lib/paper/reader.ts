import type { UnitPreferences } from '$lib/engine';
import type { Lang } from '$lib/i18n';

/** Who a text is made for: their language and the units they read. */
export type Reader = { readonly lang: Lang; readonly units: UnitPreferences };

import type { Lang } from '$lib/i18n';
import { defaultScheme } from '$lib/learning';
import { accept, foundShop, type FoundShop, type Json, type Outcome } from '$lib/records';
import type { App } from './app';
import { withTexts } from './with-texts';

/** What it takes to begin: the shop and its first lead. */
export interface Founding {
	/** Id the lead gets. */
	readonly lead: string;
	readonly leadName: string;
	readonly shopName: string;
	/** IANA name of the time zone the shop's days are in. */
	readonly timeZone: string;
	readonly lang: Lang;
	readonly secret: string;
	readonly demo: boolean;
}

/** Enters the shop with its first lead, their secret and the scheme as delivered. */
export const found = async (app: App, founding: Founding): Promise<Outcome> => {
	const { lead, shopName, leadName, timeZone, lang, demo } = founding;
	// the secret first: a power cut in between must not leave a shop that nobody can get into
	await app.secrets.set(lead, founding.secret);
	const outcome = await withTexts(app, { shopName, leadName }, lang, (refs) => {
		const wish = { name: refs.shopName, leadName: refs.leadName, timeZone, demo, lang } as FoundShop;
		return app.journal.act((state, acting) => {
			const decision = foundShop(state, { ...wish, scheme: defaultScheme as unknown as Json }, acting);
			if (!decision.ok) return decision;
			return accept(...decision.events, { event: 'person.secret-set', data: { person: lead } });
		}, lead);
	});
	if (!outcome.ok) await app.secrets.remove(lead);
	return outcome;
};

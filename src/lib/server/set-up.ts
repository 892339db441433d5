import { randomUUID } from 'node:crypto';
import type { Lang } from '$lib/i18n';
import type { Refused } from '$lib/records';
import type { App } from './app';
import { found } from './found';
import { isSetupCode } from './setup-code';
import type { readSetup } from './setup-form';
import { tried, type NotTaken } from './tried';

type Entries = ReturnType<typeof readSetup>['entries'];

/**
 * Sets up the shop for a visitor who knows the code of the console.
 * @returns the id of the first lead, or why there is none
 */
export const setUp = async (
	app: App,
	entries: Entries,
	from: { address: string; lang: Lang }
): Promise<{ ok: true; lead: string } | { ok: false; code: NotTaken } | Refused> => {
	const code = await tried(app, { whose: 'setup-code', address: from.address }, () =>
		isSetupCode(entries.code, app.setupCode)
	);
	if (code) return { ok: false, code };
	const lead = randomUUID();
	const outcome = await found(app, {
		lead,
		leadName: entries.lead,
		shopName: entries.shop,
		timeZone: entries.zone,
		secret: entries.secret,
		lang: from.lang,
		demo: false
	});
	return outcome.ok ? { ok: true, lead } : outcome;
};

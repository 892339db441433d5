import { openAuditor, type Outcome } from '$lib/records';
import type { App } from './app';
import { demoLead, demoPeople } from './demo-people';
import { found } from './found';
import { join } from './join';
import { addDemoSheets } from './shop/sheets/demo-sheets';

const AUDITOR_DAYS = 30;
const DAY = 24 * 60 * 60 * 1000;

const done = (outcome: Outcome): void => {
	if (!outcome.ok) throw new Error(`The demo shop was refused: ${JSON.stringify(outcome.refusal)}`);
};

const openToAuditor = (app: App, person: string): Promise<Outcome> => {
	const until = new Date(app.now().getTime() + AUDITOR_DAYS * DAY).toISOString();
	return app.journal.act((state, acting) => openAuditor(state, { person, until }, acting), demoLead.id);
};

/**
 * Enters the invented demo shop, its data sheets and its crew into a fresh journal, by the same acts a real shop goes
 * through. Whoever is added starts training at once, so the shop opens ready to use.
 */
export const fillDemoShop = async (app: App): Promise<void> => {
	const { id: lead, name: leadName, lang, secret } = demoLead;
	const { timeZone } = new Intl.DateTimeFormat().resolvedOptions();
	const shopName = 'Harrow Lane Finishing (demo)';
	done(await found(app, { lead, leadName, lang, secret, shopName, timeZone, demo: true }));
	done(await app.journal.act((state, acting) => addDemoSheets(state, null, acting), lead));
	for (const { id: person, roles, ...rest } of demoPeople.filter(({ id }) => id !== lead)) {
		done(await join(app, { person, roles: [...roles], ...rest }, lead));
		if (roles.includes('auditor')) done(await openToAuditor(app, person));
	}
};

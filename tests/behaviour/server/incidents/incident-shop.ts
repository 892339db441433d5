import { DEMO_SHEETS } from '$lib/engine';
import { saveSheet, type Incident, type Json } from '$lib/records';
import { found } from '$lib/server/found';
import { enterReport } from '$lib/server/incidents/report';
import { blankReport, type ReportDraft } from '$lib/server/incidents/report-draft';
import { join } from '$lib/server/join';
import { testApp } from '../test-app';
import { testEvent } from '../test-event';

export const TODAY = '2026-03-02';

/** A shop with the invented sheets, a lead, a supervisor and a trainee. */
export const incidentShop = async () => {
	const { app, wait } = await testApp();
	await found(app, {
		lead: 'lead',
		leadName: 'Lead',
		shopName: 'Shop',
		timeZone: 'UTC',
		lang: 'en',
		secret: 'nine copper racks',
		demo: false
	});
	for (const [person, name, roles] of [
		['sup', 'Sup Ervisor', ['supervisor']],
		['trn', 'Tess Rainer', ['trainee']]
	] as const) {
		const secret = roles[0] === 'trainee' ? '2580' : 'grey masking tape';
		await join(app, { person, name, roles: [...roles], lang: 'en', secret }, 'lead');
	}
	for (const sheet of DEMO_SHEETS)
		await app.journal.act(
			(state, acting) =>
				saveSheet(
					state,
					{ sheet: sheet.id, basedOn: 0, effective: TODAY, content: sheet as unknown as Json },
					acting
				),
			'lead'
		);

	/** Reports a defect of the trainee's and answers the incident. */
	const report = async (over: Partial<ReportDraft> = {}): Promise<Incident> => {
		const draft = { ...blankReport('solvent-pop', TODAY), job: 'WO-88', person: 'trn', ...over };
		const { incident, outcome } = await enterReport(testEvent(app, { person: 'sup' }), draft);
		if (!outcome.ok) throw new Error(outcome.refusal.code);
		return app.journal.state.incidents.get(incident)!;
	};
	return { app, wait, report };
};

/** A form with some values, a name as often as it has values. */
export const formOf = (values: Readonly<Record<string, string | readonly string[]>>): FormData => {
	const form = new FormData();
	for (const [name, value] of Object.entries(values))
		for (const one of typeof value === 'string' ? [value] : value) form.append(name, one);
	return form;
};

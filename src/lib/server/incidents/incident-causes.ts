import type { Cause } from '$lib/engine';
import { dayOf, type Incident } from '$lib/records';
import type { App } from '../app';
import { shopInForce } from '../shop-in-force';
import { readConditions } from './conditions';
import { isDefect } from './defect-view';
import { likelyCauses } from './likely-causes';
import { testsSoFar } from './test-results';

/** Likely causes of an incident by what is known of its job and what the tests have shown so far. */
export function incidentCauses(app: App, incident: Incident): readonly Cause[] {
	if (!isDefect(incident.defect)) return [];
	const known = readConditions(incident.conditions);
	const { shop } = shopInForce(app, known.on ?? dayOf(app.journal.state, incident.reportedAt));
	return likelyCauses(incident.defect, known, testsSoFar(incident.tests), shop);
}

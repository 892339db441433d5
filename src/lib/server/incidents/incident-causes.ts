import type { Cause } from '$lib/engine';
import type { Incident } from '$lib/records';
import type { App } from '../app';
import { shopInForce } from '../shop-in-force';
import { readConditions } from './conditions';
import { isDefect } from './defect-view';
import { judgedOn } from './judged-on';
import { likelyCauses } from './likely-causes';
import { testsSoFar } from './test-results';

/** Likely causes of an incident by what is known of its job and what the tests have shown so far. */
export function incidentCauses(app: App, incident: Incident): readonly Cause[] {
	if (!isDefect(incident.defect)) return [];
	const { shop } = shopInForce(app, judgedOn(app, incident));
	return likelyCauses(incident.defect, readConditions(incident.conditions), testsSoFar(incident.tests), shop);
}

import { format } from '$lib/i18n';
import type { Incident } from '$lib/records';
import type { Reader } from '$lib/paper';
import type { App } from '../app';
import { nameOf, shownText } from '../shown-text';
import { shopTime } from '../standing/shop-time';
import { causeViews } from './cause-views';
import { readConditions } from './conditions';
import { decisionView } from './decision-view';
import { defectName, defectView, isDefect } from './defect-view';
import { incidentCauses } from './incident-causes';
import { incidentState } from './incident-list';
import { judgedOn } from './judged-on';
import { knownView } from './known-view';
import { offeredRules } from './offered-rules';
import { ruleLine } from './rule-line';
import { shownBy } from './test-results';

/**
 * An incident as far as it has come. The name of whoever did the work stands in the report and, once it is decided,
 * with what follows for them; never beside a cause.
 */
export function incidentView(app: App, incident: Incident, reader: Reader) {
	const { lang } = reader;
	const { defect, decided } = incident;
	const causes = decided ? [] : incidentCauses(app, incident);
	const stamped = ({ by, at }: { by: string; at: string }) => ({
		by: nameOf(app, by, lang),
		at: shopTime(app, at, lang)
	});
	return {
		id: incident.incident,
		job: incident.job,
		state: incidentState(app, incident),
		reported: stamped({ by: incident.reportedBy, at: incident.reportedAt }),
		person: nameOf(app, incident.person, lang),
		note: incident.note && shownText(app, incident.note, lang),
		name: defectName(defect, lang),
		defect: isDefect(defect) ? defectView(defect, lang) : null,
		known: knownView(app, readConditions(incident.conditions), reader),
		tests: incident.tests.map((test) => ({
			...shownBy(test),
			title: ruleLine(shownBy(test).rule, lang).title,
			...stamped(test),
			note: test.note && shownText(app, test.note, lang)
		})),
		judgedOn: format.date(judgedOn(app, incident), lang),
		causes: causeViews(causes, reader),
		offered: offeredRules(causes, lang),
		decided: decisionView(app, incident, reader),
		closed: incident.closed && {
			...stamped(incident.closed),
			jobs: incident.closed.jobsChecked,
			note: incident.closed.note && shownText(app, incident.closed.note, lang)
		}
	};
}

export type IncidentView = ReturnType<typeof incidentView>;

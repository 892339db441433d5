import { terms } from '$lib/i18n';
import type { CompetencyId } from '$lib/learning';
import type { Reader } from '$lib/paper';
import type { Incident, State } from '$lib/records';
import type { App } from '../app';
import { nameOf, shownText } from '../shown-text';
import { shopTime } from '../standing/shop-time';
import { ruleLine } from './rule-line';

/** How far a refresher has come: nothing yet, being proven, proven and waiting for a signature, signed. */
function refresherState({ attempts }: State, { incident, refresherSigned }: Incident) {
	if (refresherSigned) return 'signed' as const;
	const runs = [...attempts.runs.values()].filter((run) => run.incident === incident);
	if (runs.some((run) => run.concluded?.verdict === 'passed')) return 'proven' as const;
	if (runs.some((run) => !run.concluded)) return 'open' as const;
	return runs.length ? ('failed' as const) : ('none' as const);
}

/** What was decided and how far what follows from it has come; null while undecided. */
export function decisionView(app: App, incident: Incident, { lang }: Reader) {
	const { decided, person } = incident;
	if (!decided) return null;
	const base = {
		by: nameOf(app, decided.by, lang),
		at: shopTime(app, decided.at, lang),
		evidence: shownText(app, decided.evidence, lang)
	};
	if (decided.cause === 'system')
		return { ...base, cause: decided.cause, action: shownText(app, decided.action, lang) };
	const { competency, rules } = decided;
	const { refresherSigned } = incident;
	return {
		...base,
		cause: decided.cause,
		competency: terms[lang].station[competency as CompetencyId],
		rules: rules.map((id) => ruleLine(id, lang)),
		refresher: refresherState(app.journal.state, incident),
		signed: refresherSigned && {
			by: nameOf(app, refresherSigned.signer, lang),
			at: shopTime(app, refresherSigned.at, lang)
		},
		signHref: `/${lang}/people/${person}/sign-off/${competency}?incident=${incident.incident}`
	};
}

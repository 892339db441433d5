import type { RequestEvent } from '@sveltejs/kit';
import { ruleById } from '$lib/engine';
import { format, incidents, say } from '$lib/i18n';
import { decideIncident, type Incident, type Outcome, type TextRef } from '$lib/records';
import { act } from '../act';
import { typed } from '../typed';
import { withTexts } from '../with-texts';
import { incidentCauses } from './incident-causes';
import { LONGEST_TEXT } from './longest-text';
import { offeredRules } from './offered-rules';
import { ticketlessRules } from './ticketless-rules';
import type { ToCorrect } from './to-correct';

const log = ({ person }: Incident) => ({ what: 'decide-incident', person });

function textProblems(event: RequestEvent, texts: Record<string, string>): Record<string, string> {
	const words = incidents[event.locals.lang].problem;
	const problems: Record<string, string> = {};
	for (const [name, text] of Object.entries(texts)) {
		if (!text.trim()) problems[name] = words.empty;
		else if (text.length > LONGEST_TEXT) problems[name] = words.tooLong(LONGEST_TEXT);
	}
	return problems;
}

const found = (problems: Record<string, string>) => Object.keys(problems).length > 0;

/** Decides that the way of working caused it: an action follows, and nothing for anybody. */
export async function decideSystem(
	event: RequestEvent,
	incident: Incident,
	form: FormData
): Promise<Outcome | ToCorrect> {
	const texts = { evidence: typed(form, 'evidence'), action: typed(form, 'action') };
	const problems = textProblems(event, texts);
	if (found(problems)) return { problems };
	return withTexts(event.locals.app, texts, event.locals.lang, ({ evidence, action }) => {
		// neither is empty, so both were kept
		const refs = { evidence: evidence as TextRef, action: action as TextRef };
		return act(
			event,
			decideIncident,
			{ incident: incident.incident, cause: 'system' as const, ...refs },
			log(incident)
		);
	});
}

/** Decides that a skill slipped: a refresher follows, on exactly the rules ticked, all of one competency. */
export async function decideGap(
	event: RequestEvent,
	incident: Incident,
	form: FormData
): Promise<Outcome | ToCorrect | 'tampered'> {
	const { app, lang } = event.locals;
	const words = incidents[lang].problem;
	const rules = [...new Set(form.getAll('rules'))];
	const offered = offeredRules(incidentCauses(app, incident), lang);
	const chosen = offered
		.map(({ competency, rules: all }) => ({
			competency,
			rules: all.map(({ id }) => id).filter((id) => rules.includes(id))
		}))
		.filter((one) => one.rules.length > 0);
	if (chosen.flatMap((one) => one.rules).length !== rules.length) return 'tampered';

	const evidence = typed(form, 'evidence');
	const problems = textProblems(event, { evidence });
	const [only] = chosen;
	if (!only) problems.rules = words.noRule;
	else if (chosen.length > 1) problems.rules = words.oneCompetency;
	else {
		const none = ticketlessRules(app, only.competency, only.rules).map((id) => say(ruleById(id).title, lang));
		if (none.length) problems.rules = words.noTicket(format.list(none, lang));
	}
	if (!only || found(problems)) return { problems };
	const wish = { incident: incident.incident, cause: 'skill-gap' as const, ...only };
	return withTexts(app, { evidence }, lang, (refs) =>
		act(event, decideIncident, { ...wish, evidence: refs.evidence as TextRef }, log(incident))
	);
}

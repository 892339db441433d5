import type { RequestEvent } from '@sveltejs/kit';
import { STATION_NAMES, type Competency } from '$lib/engine';
import { say, type Lang } from '$lib/i18n';
import { competencies, meaningOfFail, meaningOfPass, meaningOfRun, meaningOfSafetyGate } from '$lib/learning';
import { certification, safetyStanding, schemeAt, schemeNamed, type Run, type State } from '$lib/records';
import { requirePerson } from '../guard';
import { requirements } from '../requirements';

/** A run as its person may see it: how many drills, never which were right, until the verdict. */
export function runView(state: State, run: Run, lang: Lang) {
	const handedIn = run.drills.filter((id) => state.attempts.drills.get(id)?.settled).length;
	const limits = schemeNamed(state, run.scheme)?.limits;
	if (!limits) throw new Error(`run ${run.run} names a scheme that is not in the record`);
	const { concluded } = run;
	const means = concluded
		? [
				meaningOfRun(concluded.right, concluded.drills),
				...(concluded.verdict === 'passed' ? meaningOfPass(limits) : meaningOfFail(limits))
			]
		: [];
	return {
		run: run.run,
		competency: say(STATION_NAMES[run.competency as Competency], lang),
		refresher: run.purpose === 'refresher',
		handedIn,
		open: run.drills.find((id) => !state.attempts.drills.get(id)?.settled) ?? null,
		verdict: concluded?.verdict ?? null,
		means: means.map((text) => say(text, lang))
	};
}

/** The proving page: every competency with its runs, the refreshers due, and the safety gate. */
export function provingView(event: RequestEvent) {
	const { app, lang } = event.locals;
	const { state } = app.journal;
	const person = requirePerson(event).id;
	const moment = { now: app.now().toISOString(), requirements };
	const limits = schemeAt(state, moment.now)?.limits;
	const runs = [...state.attempts.runs.values()].filter((run) => run.person === person);
	return {
		areas: competencies.map(({ id }) => {
			const { standing, evidence, refreshers } = certification(state, person, id, moment);
			const own = runs.filter((run) => run.competency === id);
			const open = own.find((run) => !run.concluded);
			return {
				id,
				name: say(STATION_NAMES[id], lang),
				inTraining: standing.state !== 'none',
				verdict: evidence.verdict,
				open: open ? runView(state, open, lang) : null,
				past: own.filter((run) => run.concluded).map((run) => runView(state, run, lang)),
				refreshers: refreshers.filter((due) => !due.provenBy).map((due) => due.incident)
			};
		}),
		safety: limits
			? {
					...safetyStanding(state, person, limits.safety),
					means: meaningOfSafetyGate(limits).map((text) => say(text, lang))
				}
			: null,
		openHours: limits?.drill.openHours ?? null
	};
}

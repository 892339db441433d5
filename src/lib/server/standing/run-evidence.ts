import { RULES } from '$lib/engine';
import { say, type Lang } from '$lib/i18n';
import type { Run, State } from '$lib/records';
import type { App } from '../app';
import { runView } from '../proving/run-view';
import { shopTime } from './shop-time';

/** A proving run as everybody who may see the person may see it. */
export function runEvidence(app: App, run: Run, lang: Lang) {
	return {
		...runView(app.journal.state, run, lang),
		purpose: run.purpose,
		openedAt: shopTime(app, run.openedAt, lang),
		concludedAt: run.concluded && shopTime(app, run.concluded.at, lang)
	};
}

export type RunEvidence = ReturnType<typeof runEvidence>;

const ruleTitle = (id: string, lang: Lang): string => {
	const rule = RULES.find((each) => each.id === id);
	// a rule of another engine version keeps its id
	return rule ? say(rule.title, lang) : id;
};

/** How one drill of a concluded run went. */
function drillLine(app: App, state: State, id: string, lang: Lang) {
	const drill = state.attempts.drills.get(id);
	const settled = drill?.settled;
	if (!drill || !settled) throw new Error(`drill ${id} of a concluded run was never settled`);
	const breached = settled.how === 'handed-in' ? settled.findings : [];
	const stops = settled.how === 'handed-in' ? settled.safetyMisses : [];
	return {
		id,
		seed: drill.seed,
		at: shopTime(app, settled.at, lang),
		how: settled.how,
		right: settled.right,
		breached: breached
			.filter((rule) => !stops.includes(rule))
			.map((rule) => ({ id: rule, title: ruleTitle(rule, lang) })),
		stops: stops.map((rule) => ({ id: rule, title: ruleTitle(rule, lang) }))
	};
}

/** Every drill of a run, right or wrong, with the rules breached. Null before the verdict: until then nobody sees it. */
export function drillLog(app: App, run: Run, lang: Lang) {
	const { state } = app.journal;
	return run.concluded ? run.drills.map((id) => drillLine(app, state, id, lang)) : null;
}

export type DrillLine = ReturnType<typeof drillLine>;

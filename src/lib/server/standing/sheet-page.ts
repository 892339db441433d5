import { say } from '$lib/i18n';
import { certificationStates, competencies, meaningOfPass, meaningOfRun } from '$lib/learning';
import type { Reader } from '$lib/paper';
import { schemeNamed, signOffOf, type SignOff } from '$lib/records';
import type { App } from '../app';
import { nameOf } from '../shown-text';
import { areasOf } from './areas';
import { practicalView } from './practical-view';
import { shopTime } from './shop-time';
import { signOffView } from './sign-off-view';

/** What the verdict behind a signature proves and what it does not, by the scheme it fell under. */
function verdictOf({ journal: { state } }: Pick<App, 'journal'>, signed: SignOff, { lang }: Reader) {
	const run = state.attempts.runs.get(signed.evidence.run);
	const limits = run && schemeNamed(state, run.scheme)?.limits;
	if (!run?.concluded || !limits) throw new Error(`sign-off ${signed.signOff} rests on no concluded run`);
	const { drills, right } = run.concluded;
	return {
		drills,
		means: [meaningOfRun(right, drills), ...meaningOfPass(limits)].map((sentence) => say(sentence, lang))
	};
}

/**
 * The printed sheet of a person's sign-offs.
 * @param only one competency; all that were ever signed if left out
 */
export function signOffSheet(app: App, person: string, only: string | null, reader: Reader) {
	const { state } = app.journal;
	const { lang } = reader;
	const ids: readonly string[] = competencies.map(({ id }) => id);
	const signed = areasOf(app, person, lang)
		.filter(({ id }) => only === null || !ids.includes(only) || id === only)
		.flatMap((area) => {
			const latest = signOffOf(state, person, area.id);
			return latest ? [{ area, latest }] : [];
		});
	return {
		person,
		name: nameOf(app, person, lang),
		printedAt: shopTime(app, app.now().toISOString(), lang),
		head: app.journal.head,
		sheets: signed.map(({ area: { id, name, certification }, latest }) => {
			const practical = state.practicals.get(latest.evidence.practical);
			return {
				id,
				name,
				state: say(certificationStates[certification.standing.state], lang),
				refresherDue: certification.refreshers.length > 0,
				signature: signOffView(app, latest, lang),
				verdict: verdictOf(app, latest, reader),
				practical: practical ? practicalView(app, practical, reader) : null
			};
		})
	};
}

export type PrintedSheet = ReturnType<typeof signOffSheet>['sheets'][number];

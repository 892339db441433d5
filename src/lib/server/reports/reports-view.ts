import type { Lang } from '$lib/i18n';
import { itemLimits, itemLimitsProvenance } from '$lib/learning';
import { provenanceView } from '$lib/paper';
import { firstAttempts } from '$lib/records';
import type { App } from '../app';
import { crewByName } from '../standing/crew-by-name';
import { brokenRules } from './broken-rules';
import { itemTable } from './item-table';

/**
 * Which rules the crew, or one person of it, broke on tickets met for the first time; and, of the whole crew only, how
 * well the rules are asked. Undefined for somebody who is not of the crew.
 * @param wished id of a person, or '' for the crew
 */
export function reportsView(app: App, wished: string, lang: Lang) {
	const people = crewByName(app, lang).map(({ id, name }) => ({ id, name }));
	const person = people.find(({ id }) => id === wished);
	if (wished && !person) return undefined;
	const all = firstAttempts(app.journal.state);
	const ids = new Set(person ? [person.id] : people.map(({ id }) => id));
	const shown = all.filter((attempt) => ids.has(attempt.person));
	return {
		people,
		person,
		practice: shown.filter(({ how }) => how === 'practice').length,
		proving: shown.filter(({ how }) => how === 'proving').length,
		...brokenRules(shown, lang),
		// how a rule is asked has nothing to do with who still works here
		templates: person ? undefined : itemTable(all, lang),
		limits: itemLimits,
		limitsFrom: provenanceView(itemLimitsProvenance)
	};
}

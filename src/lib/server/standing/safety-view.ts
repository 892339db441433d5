import { person as words, say, type Lang } from '$lib/i18n';
import { meaningOfSafetyGate } from '$lib/learning';
import { safetyStanding, schemeAt } from '$lib/records';
import type { App } from '../app';

/**
 * Where a person stands at the safety gate, in words. While it is open only the number of drills is told: how many of
 * them were missed would say which answers were wrong.
 */
export function safetyView({ journal, now }: Pick<App, 'journal' | 'now'>, person: string, lang: Lang) {
	const scheme = schemeAt(journal.state, now().toISOString());
	if (!scheme) throw new Error('a shop with people has a scheme');
	const { state, drills, misses } = safetyStanding(journal.state, person, scheme.limits.safety);
	const told = words[lang].safety;
	return {
		state,
		text: state === 'open' ? told.open(drills) : told[state](drills, misses),
		means: meaningOfSafetyGate(scheme.limits).map((sentence) => say(sentence, lang))
	};
}

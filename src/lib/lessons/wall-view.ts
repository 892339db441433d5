import { RULES, taughtIn, type Shop } from '$lib/engine';
import { say } from '$lib/i18n';
import type { Reader } from '$lib/paper';
import type { Lesson } from './lesson';
import { ruleView } from './rule-view';
import { shopExamples } from './shop-examples';

/** What can hurt people stands first. */
const WEIGHT = { 'safety-stop': 0, quality: 1, cost: 2 } as const;

/** A lesson on one sheet for the wall: each of its rules with one number of this shop and what comes of breaking it. */
export function wallView({ slug }: Lesson, shop: Shop, reader: Reader) {
	return RULES.filter((rule) => taughtIn(rule) === slug)
		.toSorted((one, other) => WEIGHT[one.severity] - WEIGHT[other.severity])
		.map(({ id, outcome }) => {
			const { title, severity, asks, lines } = ruleView(id, shopExamples(id, shop), [], reader);
			const [line] = lines;
			return {
				...{ id, title, severity, asks },
				outcome: say(outcome, reader.lang),
				line: line ? { value: line.value, job: line.name, sheet: line.sheet } : null
			};
		});
}

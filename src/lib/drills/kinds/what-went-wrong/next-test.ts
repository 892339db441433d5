import { tracedChance, type Options, type PlannedField } from '$lib/engine';
import type { Random } from '../../random';
import { demandOf, leading } from './demand';
import type { Case } from './the-case';

const ASK_WHO = { en: 'Find out who was on shift that day.', es: 'Averigüe quién estaba de turno ese día.' };

/** Which test to do first: each cause's own, and one that tests no cause, in an order that says nothing. */
export function nextTest({ causes, network, best, good }: Case, random: Random): PlannedField {
	const words: Options = Object.fromEntries(
		network.tests.map(({ id }) => [id, causes.find(({ rule }) => rule === id)?.test ?? ASK_WHO])
	);
	const ids = random.some(Object.keys(words), Object.keys(words).length);
	const way = leading(causes.find(({ rule }) => rule === best)!.direction);
	const wrong = ids.filter((id) => !good.includes(id));
	return {
		field: 'next-test',
		offered: Object.fromEntries(ids.map((id) => [id, words[id]!])),
		demands: [
			demandOf(best, {
				kind: 'one-of',
				options: good,
				because: causes.map((cause) => tracedChance(causes, cause)),
				...(way ? { leads: Object.fromEntries(wrong.map((id) => [id, way])) } : {})
			})
		],
		superseded: [],
		answer: { kind: 'choice', option: best }
	};
}

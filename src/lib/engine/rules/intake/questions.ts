import { remembered } from '../../plan/remembered';
import type { Situation } from '../../plan/situation';
import { TOPICS, type Topic } from '../../setup/fields/intake';
import type { Expectation } from '../expectation';
import type { Rule } from '../rule';
import cureWithinPartLimit from './cure-within-part-limit';
import filmBasisStated from './film-basis-stated';
import filmWithinSheet from './film-within-sheet';
import fittedItemsOut from './fitted-items-out';
import lowEnergyPlasticAsked from './low-energy-plastic-asked';
import magnesiumRefused from './magnesium-refused';
import magnetAgreesWithPaper from './magnet-agrees-with-paper';
import materialKnown from './material-known';
import oldCoatingQuestioned from './old-coating-questioned';
import sealedCavityStops from './sealed-cavity-stops';
import yellowPlatingIsolated from './yellow-plating-isolated';

/** Rules that stand against starting a job as it is, with what each wants asked. */
const QUESTIONS: readonly (readonly [Rule, Topic])[] = [
	[materialKnown, 'material'],
	[magnetAgreesWithPaper, 'material'],
	[magnesiumRefused, 'fire'],
	[sealedCavityStops, 'cavity'],
	[oldCoatingQuestioned, 'old-coating'],
	[yellowPlatingIsolated, 'plating'],
	[fittedItemsOut, 'disassembly'],
	[cureWithinPartLimit, 'heat'],
	[filmBasisStated, 'film-basis'],
	[filmWithinSheet, 'film-window'],
	[lowEnergyPlasticAsked, 'adhesion']
];

/** What may well be asked along with a topic, and is not wrong there. */
const NEAR: Readonly<Partial<Record<Topic, readonly Topic[]>>> = {
	material: ['heat', 'fire', 'adhesion', 'plating', 'old-coating'],
	fire: ['material'],
	heat: ['conflict'],
	'film-window': ['conflict'],
	'film-basis': ['film-window'],
	plating: ['material', 'old-coating'],
	'old-coating': ['material', 'plating']
};

/** What this ticket leaves to be asked, each topic once. */
export const raisedTopics = remembered((seen: Situation): readonly Topic[] => [
	...new Set(QUESTIONS.flatMap(([rule, topic]) => (rule.applies(seen) ? [topic] : [])))
]);

/** All of these named, and nothing that has no ground on the ticket. */
export function namedTopics(topics: readonly Topic[]): Expectation {
	const all = Object.keys(TOPICS) as Topic[];
	if (!topics.length) return { kind: 'none-of', options: all };
	const near = topics.flatMap((topic) => NEAR[topic] ?? []);
	return {
		kind: 'all-of',
		options: topics,
		not: all.filter((topic) => ![...topics, ...near].includes(topic))
	};
}

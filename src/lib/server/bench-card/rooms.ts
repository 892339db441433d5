import type { Fact, Facts } from './fact';
import { benchFacts, doneFacts, shelfFacts, wearerFacts, weatherFacts } from './facts/day';
import { partFacts } from './facts/part';
import { ticketFacts } from './facts/ticket';

type RoomId = 'ticket' | 'part' | 'done' | 'weather' | 'shelf' | 'bench' | 'wearer';

/** Facts that one person knows, or reads in one place. */
export type Room = { readonly id: RoomId; readonly line?: number; readonly facts: Facts };

/** As many sorts of parts as a job may have. */
export const MOST_LINES = 3;

const partRoom = (at: number): Room => ({
	id: 'part',
	line: at + 1,
	facts: Object.fromEntries(
		Object.entries(partFacts).map(([name, fact]) => [`parts.${at}.${name}`, fact] as const)
	)
});

/** Everything the form of a job with so many part lines asks, in the order a job comes together. */
export const roomsFor = (lines: number): readonly Room[] => [
	{ id: 'ticket', facts: ticketFacts },
	...Array.from({ length: lines }, (_, at) => partRoom(at)),
	{ id: 'done', facts: doneFacts },
	{ id: 'weather', facts: weatherFacts },
	{ id: 'shelf', facts: shelfFacts },
	{ id: 'bench', facts: benchFacts },
	{ id: 'wearer', facts: wearerFacts }
];

/** The same without rooms: each fact by its name. */
export const factsFor = (lines: number): ReadonlyMap<string, Fact> =>
	new Map(roomsFor(lines).flatMap(({ facts }) => Object.entries(facts)));

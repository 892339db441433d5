import type { Entry } from '../entry';
import type { Fold } from '../fold';
import * as v from 'valibot';
import { textRef, type TextRef } from '../shapes';

/** Which erasable texts the record points at, about whom, and which of them were erased when. */
export interface TextsState {
	refs: Map<string, TextRef>;
	/** Person id to text ids. Texts about nobody in particular are under ''. */
	about: Map<string, Set<string>>;
	/** Text id to the moment it was erased. */
	erased: Map<string, string>;
}

function collect(value: unknown, found: TextRef[]): TextRef[] {
	if (typeof value !== 'object' || value === null) return found;
	if (v.is(textRef, value)) found.push(value);
	else for (const inner of Object.values(value)) collect(inner, found);
	return found;
}

/** Content entered as JSON (sheets, tickets, answers) holds no texts of ours and is not searched. */
const OPAQUE = new Set(['content', 'ticket', 'answers', 'expected', 'conditions', 'plan', 'amount']);

export const textsFold: Fold<TextsState> = {
	start: () => ({ refs: new Map(), about: new Map(), erased: new Map() }),
	apply(state, entry: Entry) {
		const { data } = entry;
		if (entry.event === 'person.erased') for (const id of entry.data.texts) state.erased.set(id, entry.at);
		const person = 'person' in data && typeof data.person === 'string' ? data.person : '';
		for (const [key, value] of Object.entries(data)) {
			if (OPAQUE.has(key)) continue;
			for (const ref of collect(value, [])) {
				state.refs.set(ref.text, ref);
				const texts = state.about.get(person) ?? new Set();
				state.about.set(person, texts.add(ref.text));
			}
		}
	}
};

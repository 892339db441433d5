import { contentHash } from '../content-hash';
import { accept, refuse, type Acting, type Decision } from '../decision';
import { json, type Json } from '../json';
import { dayOf } from '../standing/calendar-day';
import type { State } from '../state';
import * as v from 'valibot';
import { ifBackdated, unlessRole } from './guards';

export interface SaveSheet {
	readonly sheet: string;
	/** The revision the editor started from; 0 for a new sheet. */
	readonly basedOn: number;
	readonly effective: string;
	/** Already found valid by whoever knows what a data sheet must say. */
	readonly content: Json;
}

/** A lead saves a revision of a data sheet, in use from a day on. */
export function saveSheet(state: State, wish: SaveSheet, acting: Acting): Decision {
	const refused =
		unlessRole(state, acting, 'lead') ?? ifBackdated(wish.effective, dayOf(state, acting.now), 'effective');
	if (refused) return refused;
	if (!v.is(json, wish.content)) return refuse('malformed', 'content');
	const newest = state.shop.sheets.get(wish.sheet)?.at(-1);
	// somebody else saved in between: theirs is not to be lost unseen
	if ((newest?.revision ?? 0) !== wish.basedOn) return refuse('wrong-revision', 'basedOn');
	const hash = contentHash(wish.content);
	if (newest?.contentHash === hash && newest.effective === wish.effective) return refuse('unchanged');
	const { sheet, effective, content } = wish;
	return accept({
		event: 'sheet.saved',
		data: { sheet, revision: wish.basedOn + 1, effective, content, contentHash: hash }
	});
}

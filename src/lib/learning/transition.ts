import { arrowWindows } from './arrow-windows';
import type { IsoDate } from './calendar';
import { arrows, type Act, type Actor } from './certification-arrows';
import type { CertificationState } from './certification-state';
import type { Scheme } from './scheme';

export type Standing = {
	readonly state: CertificationState;
	/** First day of the state, for a lapse or an expiry the last good day; null before training. */
	readonly since: IsoDate | null;
};

export type Circumstances = {
	readonly by: Actor;
	readonly today: IsoDate;
	readonly scheme: Pick<Scheme, 'continuity' | 'renewal'>;
};

export type Transition =
	| { readonly ok: true; readonly to: CertificationState }
	| { readonly ok: false; readonly refused: 'no-such-arrow' | 'not-for-this-role' | 'outside-window' };

/** What an act does to a state, or why it is refused. The only way from one state to another. */
export function transition(from: Standing, act: Act, { by, today, scheme }: Circumstances): Transition {
	const arrow = arrows.find((candidate) => candidate.from === from.state && candidate.act === act);
	if (!arrow) return { ok: false, refused: 'no-such-arrow' };
	if (!arrow.by.includes(by)) return { ok: false, refused: 'not-for-this-role' };
	if (arrow.window) {
		if (from.since === null) throw new Error(`'${from.state}' has no day it began`);
		if (!arrowWindows[arrow.window](from.since, today, scheme))
			return { ok: false, refused: 'outside-window' };
	}
	return { ok: true, to: arrow.to };
}

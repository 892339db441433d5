import type { EventData } from '../event';
import { foldOf } from '../fold';
import type { TextRef } from '../shapes';

interface Act {
	readonly by: string;
	readonly at: string;
	readonly reason: TextRef;
}

/** A signature with everything that happened to it since. The signature itself never changes. */
export type SignOff = EventData<'signoff.granted'> & {
	readonly signedAt: string;
	/** Day by which continued work must next be confirmed. */
	confirmBy: string;
	confirmations: {
		readonly by: string;
		readonly at: string;
		readonly jobs: readonly { job: string; on: string }[];
	}[];
	seconds: { readonly second: string; readonly at: string }[];
	suspended: (Act & { readonly reviewBy: string }) | null;
	withdrawn: Act | null;
	/** Suspensions that were lifted. */
	reinstatements: Act[];
};

export interface SignOffsState {
	byId: Map<string, SignOff>;
	/** `person competency` to the latest signature; earlier ones stay in `byId`. */
	latest: Map<string, string>;
}

export const signOffKey = (person: string, competency: string): string => `${person} ${competency}`;

export const signOffsFold = foldOf<SignOffsState>(() => ({ byId: new Map(), latest: new Map() }), {
	'signoff.granted': (signOffs, data, { at }) => {
		signOffs.byId.set(data.signOff, {
			...data,
			signedAt: at,
			confirmBy: data.continuityDue,
			confirmations: [],
			seconds: [],
			suspended: null,
			withdrawn: null,
			reinstatements: []
		});
		signOffs.latest.set(signOffKey(data.person, data.competency), data.signOff);
	},
	'signoff.second-person': ({ byId }, { signOff, second }, { at }) => {
		byId.get(signOff)?.seconds.push({ second, at });
	},
	'continuity.confirmed': ({ byId }, { signOff, jobs, continuityDue }, { at, actor }) => {
		const confirmed = byId.get(signOff);
		if (!confirmed) return;
		confirmed.confirmBy = continuityDue;
		confirmed.confirmations.push({ by: actor, at, jobs });
	},
	'signoff.suspended': ({ byId }, { signOff, reason, reviewBy }, { at, actor }) => {
		const suspended = byId.get(signOff);
		if (suspended) suspended.suspended = { by: actor, at, reason, reviewBy };
	},
	'signoff.reinstated': ({ byId }, { signOff, reason }, { at, actor }) => {
		const reinstated = byId.get(signOff);
		if (!reinstated) return;
		reinstated.suspended = null;
		reinstated.reinstatements.push({ by: actor, at, reason });
	},
	'signoff.withdrawn': ({ byId }, { signOff, reason }, { at, actor }) => {
		const withdrawn = byId.get(signOff);
		if (withdrawn) withdrawn.withdrawn = { by: actor, at, reason };
	}
});

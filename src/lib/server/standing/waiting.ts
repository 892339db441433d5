import type { Lang } from '$lib/i18n';
import { evidenceGaps } from '$lib/learning';
import type { Area } from './areas';

/** Something a person cannot go on with until a supervisor or lead acts. */
export type Waiting = {
	readonly what: 'practical' | 'signature' | 'refresher-signature' | 'continuity' | 'suspension-review';
	readonly competency: string;
	/** The day it is wanted by, where there is one. */
	readonly by: string | null;
	readonly href: string;
};

function waitingIn({ id, name, certification }: Area, person: string, lang: Lang): Waiting[] {
	const { standing, evidence, refreshers, signOff, validity } = certification;
	const page = (room: string) => `/${lang}/people/${person}/${room}/${id}`;
	const one = (what: Waiting['what'], href: string, by: string | null = null): Waiting => ({
		what,
		competency: name,
		by,
		href
	});
	const refresher = refreshers.filter((due) => due.provenBy !== null);
	return [
		...(standing.state === 'eligible' ? [one('signature', page('sign-off'))] : []),
		...(standing.state === 'in-training' &&
		evidence.verdict === 'passed' &&
		evidenceGaps(evidence).includes('practical')
			? [one('practical', page('practical'))]
			: []),
		...refresher.map((due) =>
			one('refresher-signature', `${page('sign-off')}?${new URLSearchParams({ incident: due.incident })}`)
		),
		...(standing.state === 'continuity-lapsed'
			? [one('continuity', page('continuity'), validity?.continuityDue ?? null)]
			: []),
		...(signOff?.suspended
			? [one('suspension-review', `/${lang}/people/${person}#${id}`, signOff.suspended.reviewBy)]
			: [])
	];
}

/** What a person waits for, in the order of the competencies. */
export const waitingOf = (person: string, areas: readonly Area[], lang: Lang): Waiting[] =>
	areas.flatMap((area) => waitingIn(area, person, lang));

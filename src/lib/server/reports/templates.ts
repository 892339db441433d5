import { RULES, STATIONS, type Station } from '$lib/engine';
import type { FirstAttempt } from '$lib/records';

/** What a drill was made from: its kind and the part of the work it asks about. */
export type Template = {
	readonly kind: string;
	readonly about: Station | 'whole';
	readonly attempts: readonly FirstAttempt[];
};

const ABOUT: readonly Template['about'][] = ['whole', ...STATIONS];

/** A practice ticket of one station asks rules of that station only; the record does not name it. */
function aboutOf({ competency, kept }: FirstAttempt): Template['about'] {
	const proven = STATIONS.find((station) => station === competency);
	if (proven) return proven;
	const stations = new Set(RULES.filter(({ id }) => kept.has(id)).map(({ station }) => station));
	const [only] = stations;
	return only && stations.size === 1 ? only : 'whole';
}

/** First attempts by the template of their ticket, practice first, in the order of the work. */
export function templatesOf(attempts: readonly FirstAttempt[]): readonly Template[] {
	const kinds = [...new Set((['practice', 'proving'] as const).flatMap((how) => ofHow(attempts, how)))];
	return kinds.flatMap((kind) =>
		ABOUT.map((about) => ({
			kind,
			about,
			attempts: attempts.filter((attempt) => attempt.kind === kind && aboutOf(attempt) === about)
		})).filter((template) => template.attempts.length > 0)
	);
}

const ofHow = (attempts: readonly FirstAttempt[], how: FirstAttempt['how']) =>
	attempts
		.filter((attempt) => attempt.how === how)
		.map(({ kind }) => kind)
		.sort();

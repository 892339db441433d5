import type { Medium } from '../../job/bench';
import { materials } from '../../plan/materials';
import type { Situation } from '../../plan/situation';
import { shopValue } from '../../shop/shop';
import { BLASTING } from './blast-guide';

/** How the parts of this job are blasted, one entry per material; undefined where one of them is only scuffed. */
export function blastings(seen: Situation) {
	const known = materials(seen).map((material) => BLASTING[material]);
	const blasted = known.filter((one) => one !== null && (!one.ifAgreed || seen.job.blastingAgreed));
	return known.length && blasted.length === known.length ? blasted.filter((one) => one !== null) : undefined;
}

/** Whether some part on the ticket may only be scuffed by hand: the most delicate one decides. */
export const onlyScuffed = (seen: Situation) => materials(seen).length > 0 && blastings(seen) === undefined;

/** Longest time from blasting to coating, by the most reactive part; undefined where nothing is blasted. */
export function blastClock(seen: Situation) {
	const clocks = blastings(seen)?.map(({ clock }) => shopValue(seen.shop, clock));
	return clocks?.reduce((short, one) => (short.value <= one.value ? short : one));
}

/** Whether parts blasted earlier have waited too long. */
export function isOverdue(seen: Situation): boolean {
	const clock = blastClock(seen);
	return clock !== undefined && seen.job.blastedAgo !== null && seen.job.blastedAgo > clock.value;
}

/** Media on the bench that suit every part, the usual one first; undefined where no blasting is left to do. */
export function suitableMedia(seen: Situation): readonly Medium[] | undefined {
	const parts = blastings(seen);
	if (!parts || (seen.job.blastedAgo !== null && !isOverdue(seen))) return undefined;
	return parts[0]!.media.filter(
		(medium) => seen.job.bench.media.includes(medium) && parts.every(({ media }) => media.includes(medium))
	);
}

/** Whether these parts go into the blast cabinet for this job. */
export const toBlast = (seen: Situation): boolean => (suitableMedia(seen)?.length ?? 0) > 0;

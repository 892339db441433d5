import type { Breathing } from '../../job/bench';
import type { Situation } from '../../plan/situation';
import { has } from './hazards';

/**
 * The least protection a gun calls for by the coating's hazards; undefined where the sheet names none that is
 * breathed in. The SDS and the shop's assessment may ask for more.
 */
export const gunNeeds = (seen: Situation): Extract<Breathing, 'air-fed' | 'half-mask'> | undefined =>
	has(seen, 'isocyanate') ? 'air-fed' : has(seen, 'solvent-vapour') ? 'half-mask' : undefined;

/** A tight mask seals only on a shaved face that was fit-tested with it; a loose hood needs neither. */
export const mayWearTight = ({ job }: Situation) => !job.wearer.beard && job.wearer.fitTestValid;

/** Protection that meets the coating's hazards and seals on this person, the plainest first. */
export function fitsThisPerson(seen: Situation): readonly Breathing[] {
	const needed = gunNeeds(seen);
	if (!needed) return [];
	return needed === 'half-mask' && mayWearTight(seen) ? ['half-mask', 'air-fed'] : ['air-fed'];
}

import type { IsoDate } from './calendar';
import type { Standing } from './transition';
import type { Validity } from './validity';

/**
 * The state on a day: the last one that a person's act led to, moved along the arrows that need nobody. Evidence that
 * is complete makes eligible; the day after a missed confirmation lapses; the day after the last valid one expires.
 * @param validity dates of the last sign-off, null where there is none
 */
export function stateOn(
	decided: Standing,
	given: { readonly evidenceComplete: boolean; readonly validity: Validity | null },
	today: IsoDate
): Standing {
	if (decided.state === 'in-training')
		return given.evidenceComplete ? { ...decided, state: 'eligible' } : decided;
	if (!given.validity || !['signed', 'suspended', 'continuity-lapsed'].includes(decided.state))
		return decided;

	const { validUntil, continuityDue } = given.validity;
	if (today > validUntil) return { state: 'expired', since: validUntil };
	if (decided.state === 'signed' && today > continuityDue)
		return { state: 'continuity-lapsed', since: continuityDue };
	return decided;
}

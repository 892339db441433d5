import { itemLimits } from './item-limits';

/** Why an item needs a second look; `pull` means it must not be asked again until somebody has looked. */
export type ItemFlag = 'pull' | 'weak' | 'hard' | 'easy';

/**
 * What the numbers of an item call for, the gravest first.
 * @param share right answers, 0 to 1
 * @param itemRest correlation with the rest of the sheet, or null where there is none
 */
export function itemFlags(share: number, itemRest: number | null): readonly ItemFlag[] {
	const flags: ItemFlag[] = [];
	if (itemRest !== null && itemRest < 0) flags.push('pull');
	else if (itemRest !== null && itemRest < itemLimits.weak) flags.push('weak');
	if (share < itemLimits.hard) flags.push('hard');
	if (share > itemLimits.easy) flags.push('easy');
	return flags;
}

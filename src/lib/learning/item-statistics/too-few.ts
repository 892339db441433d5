import { itemLimits } from './item-limits';

/** Too few first attempts to say anything. */
export type TooFew = { readonly refused: 'too-few'; readonly n: number; readonly least: number };

/** The refusal where `n` first attempts say nothing yet, otherwise undefined. */
export const tooFew = (n: number): TooFew | undefined =>
	n < itemLimits.least ? { refused: 'too-few', n, least: itemLimits.least } : undefined;

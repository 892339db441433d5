import type { Provenance } from '$lib/engine';

/** When item statistics are shown at all, and from where on they ask for a second look. */
export const itemLimits = {
	/** First attempts below which nothing is shown: a share of so few is mostly chance. */
	least: 30,
	/** First attempts up to which a number is only indicative: a correlation of 0.20 stands out from 0 at about 96. */
	firmFrom: 100,
	/** Share right below which an item is looked at again. */
	hard: 0.3,
	/** Share right above which an item is looked at again; what everybody has learned may stay easy. */
	easy: 0.95,
	/** Item–rest correlation below which an item is looked at again. Below 0 it is pulled at once. */
	weak: 0.1,
	/** Reliability from which a fixed form may be judged by its count of right answers. */
	soundForm: 0.8
} as const;

/** Rules of thumb of those who build tests; nobody has looked them up for this trade. */
export const itemLimitsProvenance: Provenance = { origin: 'common-practice', verification: 'memory' };

import type { Verification } from '../../sources/provenance';

/** Number, mean size in µm, and whether that size was read. */
export type GritRow = readonly [number: number, micrometres: number, verification: Verification];

const inTable = { read: 'table on a reference page about sandpaper' };
const inComparison = { read: 'comparison on a wood-finishing page' };
const rounded = {
	read: 'whole micrometres in a comparison on a wood-finishing page; the decimal from memory'
};

export const FEPA_P: readonly GritRow[] = [
	[12, 1815, inTable],
	[16, 1324, inTable],
	[20, 1000, inTable],
	[24, 764, inTable],
	[30, 642, inTable],
	[36, 538, inTable],
	[40, 425, inTable],
	[50, 336, inTable],
	[60, 269, inTable],
	[80, 201, inTable],
	[100, 162, inTable],
	[120, 125, inTable],
	[150, 100, inComparison],
	[180, 82, inComparison],
	[220, 68, inComparison],
	[320, 46.2, rounded],
	[360, 40.5, rounded],
	[400, 35, rounded],
	[500, 30.2, rounded],
	[600, 25.8, rounded],
	[800, 21.8, rounded],
	[1000, 18.3, rounded],
	[1200, 15.3, rounded],
	[1500, 12.6, rounded],
	[2000, 10.3, rounded],
	[2500, 8.4, rounded]
];

/** Blasting sizes. Nobody has read the means; of 80 and 180 the sieve limits were, and the means lie between them. */
export const FEPA_F: readonly GritRow[] = [
	[24, 745, 'memory'],
	[30, 625, 'memory'],
	[36, 525, 'memory'],
	[46, 370, 'memory'],
	[54, 310, 'memory'],
	[60, 260, 'memory'],
	[70, 218, 'memory'],
	[80, 185, 'memory'],
	[90, 154, 'memory'],
	[100, 129, 'memory'],
	[120, 109, 'memory'],
	[150, 82, 'memory'],
	[180, 69, 'memory'],
	[220, 58, 'memory']
];

/** Ends at 220: on finer numbers what was read differs by a tenth. */
export const ANSI_COATED: readonly GritRow[] = [
	[16, 1320, inTable],
	[20, 905, inTable],
	[24, 715, inTable],
	[30, 638, inTable],
	[36, 535, inTable],
	[40, 428, inTable],
	[50, 351, inTable],
	[60, 268, inTable],
	[80, 192, inTable],
	[100, 141, inTable],
	[120, 116, inComparison],
	[150, 93, inComparison],
	[180, 82, inComparison],
	[220, 68, inComparison]
];

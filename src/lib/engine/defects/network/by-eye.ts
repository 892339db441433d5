/** How a cause's own test ends: in a number or a written word, or in what somebody sees or is told. */
export type TestEnd = 'reading' | 'eye';

/** Rules whose `evidence` ends in a look, a touch or a question. The tests of all others measure, count, weigh or read. */
export const BY_EYE: readonly string[] = [
	'old-coating-questioned',
	'yellow-plating-isolated',
	'clean-handling-gloves',
	'cleaner-suits-material',
	'water-break-whole-minute',
	'scuff-instead-of-blasting',
	'iron-free-media',
	'blast-stand-off',
	'laminate-scuff-paper',
	'bake-out-temperature',
	'blind-hole-down',
	'hardener-sound',
	'agitate-settled-can',
	'stir-time',
	'clean-dry-air',
	'recesses-first-show-face-last',
	'probe-heaviest-and-thinnest',
	'cool-before-handling',
	'rub-count-from-sheet',
	'cross-cut-on-witness',
	'no-open-chlorinated-dip'
];

export const testEnd = (rule: string): TestEnd => (BY_EYE.includes(rule) ? 'eye' : 'reading');

import type { FormulaNote } from '../formula-note';
import { comparators } from './comparator-grade';
import { gritSize } from './grit-size';

/** In the order they are shown. */
export const grainFormulas: readonly FormulaNote[] = [
	...Object.values(gritSize),
	comparators.grit.grade,
	comparators.shot.grade
];

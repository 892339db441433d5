import type { FormulaNote } from '../formula-note';
import { activationEnergy } from './activation-energy';
import { cureCredit } from './cure-credit';
import { cureEquivalence } from './cure-equivalence';
import { timeAbove } from './time-above';

/** In the order they are shown. */
export const cureFormulas: readonly FormulaNote[] = [
	cureEquivalence,
	activationEnergy,
	timeAbove,
	cureCredit
];

import type { Rule } from '../rule';
import crossCutClass from './cross-cut-class';
import crossCutOnWitness from './cross-cut-on-witness';
import failedWitnessHoldsLoad from './failed-witness-holds-load';
import filmReadingsJudged from './film-readings-judged';
import gaugeSuitsSubstrate from './gauge-suits-substrate';
import releaseByAnother from './release-by-another';
import rubCountFromSheet from './rub-count-from-sheet';
import spotMaximum from './spot-maximum';
import spotMinimum from './spot-minimum';

/** In working order. */
export const inspectionRules: readonly Rule[] = [
	gaugeSuitsSubstrate,
	spotMinimum,
	spotMaximum,
	filmReadingsJudged,
	rubCountFromSheet,
	crossCutOnWitness,
	crossCutClass,
	failedWitnessHoldsLoad,
	releaseByAnother
];

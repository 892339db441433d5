import type { DefectId } from '../../defects/defects';
import type { OutcomeDefect, OutcomeMeasure } from '../outcome';
import { shareLeft } from '../share-left';

/** Defects under which the film lets go of the part, of the coat below, or of itself. */
const TAKEN_BY: ReadonlySet<DefectId> = new Set([
	'flaking',
	'intercoat-peel',
	'fisheyes',
	'outgassing-blisters',
	'amine-bloom',
	'soft-film',
	'over-cure',
	'flash-rust',
	'fingerprint',
	'wrinkling'
]);

/** How much of the hold a sound film would have is left. */
export const adhesion = (defects: readonly OutcomeDefect[]): OutcomeMeasure => ({
	id: 'adhesion',
	kind: 'index',
	...shareLeft(defects, TAKEN_BY)
});

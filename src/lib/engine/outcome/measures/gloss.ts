import type { DefectId } from '../../defects/defects';
import type { OutcomeDefect, OutcomeMeasure } from '../outcome';
import { shareLeft } from '../share-left';

/** Defects that change how the whole face shines; single spots do not. */
const TAKEN_BY: ReadonlySet<DefectId> = new Set([
	'orange-peel',
	'dry-spray',
	'blushing',
	'amine-bloom',
	'mottling',
	'gloss-off',
	'soft-film',
	'over-cure',
	'wrinkling'
]);

/** What is left of the gloss the sheet promises. */
export const gloss = (defects: readonly OutcomeDefect[]): OutcomeMeasure => ({
	id: 'gloss',
	kind: 'index',
	...shareLeft(defects, TAKEN_BY)
});

import type { Direction } from '../defects/causes';
import type { DefectId } from '../defects/defects';
import type { Traced } from '../plan/trace';
import type { FieldId } from '../setup/fields';
import type { Degree } from './degree';
import type { Harm } from './harm';

export const MEASURE_IDS = [
	'film-built',
	'wetness',
	'solvent-left',
	'cure-reached',
	'part-heat',
	'key',
	'gloss',
	'adhesion'
] as const;
export type MeasureId = (typeof MEASURE_IDS)[number];

export type Side = 'low' | 'high';

/** Where a measure stands to what is wanted; 0 with no side is as wanted. */
export type Standing = { readonly degree: 0 | Degree; readonly side: Side | null };

/** One thing that could be found of the part at the oven door. */
export type OutcomeMeasure = Standing &
	(
		| {
				readonly id: Exclude<MeasureId, IndexId>;
				readonly kind: 'quantity';
				/** Null where what was set lies outside what the law holds for. */
				readonly value: Traced | null;
				/** Null where there is no limit on that side. */
				readonly wanted: { readonly min: Traced | null; readonly max: Traced | null };
		  }
		| {
				readonly id: IndexId;
				readonly kind: 'index';
				/**
				 * No law gives these a unit. Wetness and key run from −1 (dry, no key) over 0 (as wanted) to 1 (flooded, too
				 * deep); gloss and adhesion from 1 (as wanted) towards 0 (none left).
				 */
				readonly index: number;
		  }
	);
type IndexId = 'wetness' | 'key' | 'gloss' | 'adhesion';

/** A defect that comes out, with the broken rules it comes from. */
export type OutcomeDefect = {
	readonly defect: DefectId;
	readonly severity: Degree;
	readonly from: readonly { readonly rule: string; readonly direction: Direction }[];
};

/** What would come out of the oven. A teaching model: it orders consequences, it does not predict a part. */
export type Outcome = {
	readonly model: 'teaching';
	/** Those the job's fields speak of, in working order. */
	readonly measures: readonly OutcomeMeasure[];
	/** Worst first. */
	readonly defects: readonly OutcomeDefect[];
	/** Broken safety rules by what they do to people; hazards that nobody met are left out. */
	readonly exposure: readonly { readonly harm: Harm; readonly rules: readonly string[] }[];
	/** Rules whose breach is a safety stop: they override everything else here. */
	readonly harm: readonly string[];
	/** Fields left empty: nothing is said of what they would have done. */
	readonly unset: readonly FieldId[];
};

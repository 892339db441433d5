import type { Provenance } from '../sources/provenance';
import type { LineId } from './lines';
import type { Cup, Family, Hazard, Thinner } from './traits';

/** 'YYYY-MM-DD' */
export type IsoDate = string;

/** One stated number or window, in the unit it is printed in, from the day it holds. */
export type SheetLine = {
	readonly from: IsoDate;
	readonly unit: string;
	readonly provenance: Provenance;
} & ({ readonly value: number } | { readonly min: number; readonly max: number });

/**
 * A coating's technical data sheet as structured data. `lines` hold every number, each with its history by start date;
 * the rest are the sheet's statements that are not numbers.
 */
export type DataSheet = {
	readonly id: string;
	readonly title: string;
	/** Language the title was typed in. */
	readonly lang: 'en' | 'es';
	readonly demo: boolean;
	readonly family: Family;
	readonly parts: 1 | 2;
	/** Basis of the mix ratio; null for a one-part coating. */
	readonly basis: 'volume' | 'weight' | null;
	/** The only thinner the sheet names; null where it allows none. */
	readonly thinner: Thinner | null;
	readonly cup: Cup | null;
	readonly rubSolvent: string | null;
	readonly hazards: readonly Hazard[];
	/** Filled or lubricant-loaded: settles and is stripped by fine strainers. */
	readonly filled: boolean;
	readonly lines: Readonly<Partial<Record<LineId, readonly SheetLine[]>>>;
};

import type { GunControlId } from '$lib/engine';
import type { FieldOf } from '../field-view';
import type { FilmMapView } from './film-map-view';

/** One control of the gun bench on its own scale, in the reader's unit; value and unit together can be typed. */
export type GunControlView = {
	/** All but `flow` are names of fields of the sheet. */
	readonly id: GunControlId;
	readonly label: string;
	/** Empty for a count. */
	readonly unit: string;
	readonly min: number;
	readonly max: number;
	readonly step: number;
	readonly value: number;
};

/** The gun bench as the server hands it over. */
export type GunBenchView = {
	/** Where a film map is asked for; each control's text under its id. */
	readonly address: string;
	readonly controls: readonly GunControlView[];
	/** The one setting that is no field of the sheet, to type where there are no sliders. */
	readonly flow: FieldOf<'quantity'>;
	/** The film of what is in the sheet; null while something is missing, and then what. */
	readonly map: FilmMapView | null;
	readonly missing: string | null;
};

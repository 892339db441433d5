/** What the recorder of an oven wrote during one load, as straight lines between samples. Seconds and kelvins. */
export type OvenChart = {
	readonly kind: 'oven-chart';
	/** Unit the recorder is marked in. */
	readonly unit: '°C' | '°F';
	/** Seconds from one sample to the next; the first is taken as the door closes. */
	readonly every: number;
	/** Seconds in the smallest division of its time axis. */
	readonly division: number;
	/** The sensor of the oven's own display. */
	readonly air: readonly number[];
	readonly heaviest: readonly number[];
	readonly thinnest: readonly number[];
	/** When the door stood open; the last time is the unloading and lasts to the end. */
	readonly doorOpen: readonly { readonly from: number; readonly to: number }[];
};

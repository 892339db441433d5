/** What is printed on the face of a dial, in its own unit: first and last number, steps between numbers, smallest division. */
export type Scale = {
	readonly unit: string;
	readonly from: number;
	readonly to: number;
	readonly numbered: number;
	readonly division: number;
};

/** A pointer over a scale. `value` in SI. */
export type DialGauge = {
	readonly kind: 'dial';
	readonly shows: 'blast-pressure' | 'cap-pressure' | 'air' | 'humidity';
	readonly dimension: 'pressure' | 'temperature' | 'fraction';
	readonly scale: Scale;
	readonly value: number;
};

/** A sweep hand of one turn a minute, and a small hand that counts the minutes. `value` in seconds. */
export type Stopwatch = { readonly kind: 'stopwatch'; readonly shows: 'cup-time'; readonly value: number };

/** A number on a display. `value` in SI; `min:s` is minutes and whole seconds. */
export type DigitalGauge = {
	readonly kind: 'digital';
	readonly shows: 'cup-time' | 'spot';
	readonly dimension: 'duration' | 'length';
	readonly unit: 's' | 'min:s' | 'mil' | 'µm';
	readonly decimals: number;
	readonly value: number;
};

export type Instrument = DialGauge | Stopwatch | DigitalGauge;

/** Instruments as they stand, each in its own unit. */
export type GaugePanel = { readonly kind: 'gauge-panel'; readonly instruments: readonly Instrument[] };

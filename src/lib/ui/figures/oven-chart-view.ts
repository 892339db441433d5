/** Lines of an axis, as shares of the plot. */
type AxisView = {
	readonly small: readonly number[];
	readonly numbered: readonly { readonly at: number; readonly label: string }[];
};

/** The chart of one oven load in the reader's language and the recorder's unit; what stands in the plot is shares of it. */
export type OvenChartView = {
	readonly kind: 'oven-chart';
	readonly temperatureTitle: string;
	/** What the smallest divisions are. */
	readonly divisions: string;
	readonly time: AxisView;
	readonly temperature: AxisView;
	readonly traces: readonly {
		readonly id: 'heaviest' | 'thinnest' | 'air';
		readonly label: string;
		/** How the line is drawn, in words. */
		readonly line: string;
		readonly points: readonly (readonly [across: number, up: number])[];
	}[];
	readonly doorOpen: readonly { readonly from: number; readonly to: number }[];
	/** The same readings in numbers. */
	readonly table: {
		readonly caption: string;
		readonly head: readonly string[];
		readonly rows: readonly {
			readonly time: string;
			readonly readings: readonly string[];
			readonly door: string;
		}[];
	};
};

/** A face with a pointer. Angles in degrees clockwise from the top. */
export type FaceView = {
	readonly ticks: readonly { readonly at: number; readonly rank: 'number' | 'middle' | 'plain' }[];
	readonly numbers: readonly { readonly at: number; readonly text: string }[];
	readonly pointer: number;
};

type Named = {
	readonly name: string;
	/** As marked on the instrument. */
	readonly unit: string;
	/** What can be seen, said: no easier to read than the drawing. */
	readonly inWords: string;
};

export type DialView = Named & { readonly kind: 'dial'; readonly face: FaceView };
export type StopwatchView = Named & {
	readonly kind: 'stopwatch';
	readonly face: FaceView;
	readonly minutes: FaceView;
};
export type DigitalView = Named & { readonly kind: 'digital'; readonly shown: string };

/** Instruments as plain data in the reader's language; the units are those of the instruments. */
export type GaugePanelView = {
	readonly kind: 'gauge-panel';
	readonly note: string;
	readonly instruments: readonly (DialView | StopwatchView | DigitalView)[];
};

/** A window onto the panel: how many pixels, where its corner lies and how much a pixel covers. */
export type Frame = {
	/** Pixels. */
	readonly width: number;
	readonly height: number;
	/** Upper left corner on the panel, mm. */
	readonly left: number;
	readonly top: number;
	/** Side of a pixel, mm. */
	readonly pixel: number;
};

/** The drawn piece of a panel, mm. */
export const PANEL = { width: 60, height: 40 } as const;

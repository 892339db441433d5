import type { skillPanel } from '$lib/i18n';

/** A skill panel as plain data: the finish draws the evidence, the strip tells the standing of a signed one. */
export type PanelView = {
	readonly id: string;
	/** Name of the competency in the reader's language. */
	readonly name: string;
	readonly finish: keyof (typeof skillPanel)['en']['finish'];
	readonly strip?: {
		readonly standing: keyof (typeof skillPanel)['en']['standing'];
		/** ISO 8601: valid until, for a signed panel; since when, for every other standing. */
		readonly date?: string;
	};
	readonly href?: string;
};

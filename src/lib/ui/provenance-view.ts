import type { findings } from '$lib/i18n';

/** Where a number comes from and whether a person read it there. */
export type ProvenanceView = {
	readonly origin: keyof (typeof findings)['en']['origin'];
	/** What was read, in the reader's language, or that nobody has: it rests on memory. */
	readonly verification: { readonly read: string } | 'memory';
	/** The publication with clause or table, where there is one. */
	readonly cite?: string;
	/** True if the lead can change it among the shop values. */
	readonly editable?: boolean;
};

import type { Text } from '../text';

/** What a person at the rack needs of one defect. Its causes are not written here: they are the rules that break into it. */
export type DefectSheet = {
	/** How it looks on the part. */
	readonly look: Text;
	/** What it is taken for, and the quick check that tells them apart. */
	readonly lookAlike: Text;
	/** What to do with the part and the rest of the batch now. */
	readonly now: Text;
};

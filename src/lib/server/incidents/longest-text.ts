/** Longer free text than this, in characters, belongs into a file of its own beside the record. */
export const LONGEST_TEXT = 2000;

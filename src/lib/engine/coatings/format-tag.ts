/** Names the layout of a data sheet in a file; another number when the layout changes. */
export const SHEET_FORMAT = 'witness-panel/data-sheet@1';

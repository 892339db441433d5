/** One sheet as handed in: each thing it asked, by id, and whether the answer to it was right. */
export type AnsweredSheet = ReadonlyMap<string, boolean>;

import * as v from 'valibot';

/** What a signer declares about the person they sign for. Any `true` makes the signature non-independent. */
export const conflict = v.strictObject({
	trained: v.boolean(),
	lineManager: v.boolean(),
	relative: v.boolean(),
	paidByResult: v.boolean()
});
export type Conflict = v.InferOutput<typeof conflict>;

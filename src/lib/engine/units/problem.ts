import type { Dimension } from './dimension';

/** Why a typed quantity could not be taken, as data; `problemText` words it. */
export type QuantityProblem = { readonly typed: string; readonly dimension: Dimension } & (
	| {
			readonly code:
				| 'empty'
				| 'not-a-number'
				| 'ambiguous-number'
				| 'more-than-one-number'
				| 'missing-unit'
				| 'below-absolute-zero'
				| 'negative'
				| 'not-whole'
				| 'too-large';
	  }
	| { readonly code: 'unknown-unit'; readonly unit: string }
	| { readonly code: 'wrong-dimension'; readonly unit: string; readonly found: Dimension }
	| {
			readonly code: 'ambiguous-ounce' | 'ambiguous-unit';
			readonly unit: string;
			readonly choices: readonly string[];
	  }
);

export type QuantityProblemCode = QuantityProblem['code'];

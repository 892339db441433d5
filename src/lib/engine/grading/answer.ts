import type { FieldId } from '../setup/fields';
import type { Si } from '../units/dimension';

/** What a person put into one field; quantities in SI, with what was typed. */
export type Answer =
	| {
			readonly kind: 'quantity';
			readonly value: Si;
			readonly typed: string;
			/** Half of the last digit a gauge in the typed unit shows, SI: a limit typed in another unit is still that limit. */
			readonly rounding?: number;
	  }
	| { readonly kind: 'choice'; readonly option: string }
	| { readonly kind: 'choices'; readonly options: readonly string[] }
	| { readonly kind: 'order'; readonly options: readonly string[] };

export type Answers = Readonly<Partial<Record<FieldId, Answer>>>;

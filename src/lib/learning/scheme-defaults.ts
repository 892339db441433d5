import { keepingLimits } from './keeping-limits';
import { provingLimits } from './proving-limits';
import type { SchemeLimit } from './scheme-limit';

/** Every number of the scheme by group: what a shop starts with and may choose instead. */
export const schemeDefaults = {
	...provingLimits,
	...keepingLimits
} satisfies Readonly<Record<string, Readonly<Record<string, SchemeLimit>>>>;

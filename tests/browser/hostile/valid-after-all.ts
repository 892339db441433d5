import { VALUES, type ValueName } from './values';

const names = VALUES.map(({ name }) => name);
const NOTHING: readonly ValueName[] = ['nothing', 'blanks'];
const HUGE: readonly ValueName[] = ['huge', 'huge number'];
/** Everything that is text, however odd, and not too long: shown as it was typed, never run. */
const TEXT = names.filter((name) => !NOTHING.includes(name) && !HUGE.includes(name));
const OPTIONAL_TEXT = [...TEXT, ...NOTHING];

type Valid = {
	/** Form action: route without language, then its name. */
	readonly at: string;
	readonly fields: readonly string[];
	readonly values: readonly ValueName[];
	readonly why: string;
};

/** What looks hostile and is right after all, field by field. Anything not listed has to be refused. */
const VALID: readonly Valid[] = [];

export const isValidAfterAll = (at: string, field: string, value: ValueName): boolean =>
	VALID.some((one) => one.at === at && one.fields.includes(field) && one.values.includes(value));

/** Form actions that need no field: any form is as good as the page's own, for whoever is shown it or for everybody. */
const NEEDS_NOTHING: Readonly<Record<string, { readonly whose: 'shown' | 'everybody'; readonly why: string }>> = {
	'sign-out ?/default': { whose: 'everybody', why: 'there is nothing to get wrong about leaving' }
};

/** @param shown whether the sender's own page has the form */
export const needsNothing = (at: string, shown: boolean): boolean =>
	NEEDS_NOTHING[at]?.whose === 'everybody' || (NEEDS_NOTHING[at] !== undefined && shown);

void OPTIONAL_TEXT;

import { VALUES, type ValueName } from './values';

const names = VALUES.map(({ name }) => name);
const NOTHING: readonly ValueName[] = ['nothing', 'blanks'];
/** Everything that is text, however odd, and not too long: kept and shown as it was typed, never run. */
const TEXT = names.filter((name) => !NOTHING.includes(name) && name !== 'huge');
/** Odd texts that are long and varied enough for a passphrase. */
const PASSPHRASES = VALUES.filter(
	({ text }) => text.length >= 12 && text.length <= 200 && new Set(text).size >= 5
).map(({ name }) => name);

type Valid = {
	/** Form action: route without language, then its name. */
	readonly at: string;
	readonly fields: readonly string[] | RegExp;
	readonly values: readonly ValueName[];
	/** Right only where every field holds it. */
	readonly together?: true;
	readonly why: string;
};

const ANY = /^/;
const FREE_TEXT = 'free text is whatever somebody typed';
const UNKNOWN = 'what nobody wrote down stays empty';
const LATER = 'what a shop decides may begin on any later day';
const ASKED = 'an answer may be left out, and 85 psi is one where a pressure is asked for';

const CARD = 'bench-card ?/default';
const EDIT = 'shop/sheets/[sheet]/edit ?/default';

/** What looks hostile and is right after all, field by field. Anything not listed has to be refused. */
const VALID: readonly Valid[] = [
	{ at: 'incidents/[id] ?/cause', fields: ['note'], values: [...TEXT, ...NOTHING], why: FREE_TEXT },
	{ at: 'incidents/[id] ?/system', fields: ['evidence', 'action'], values: TEXT, why: FREE_TEXT },
	{ at: 'incidents/[id] ?/gap', fields: ['evidence'], values: TEXT, why: FREE_TEXT },
	{ at: 'incidents/[id] ?/close', fields: ['note'], values: [...TEXT, ...NOTHING], why: FREE_TEXT },
	{ at: 'incidents/new ?/default', fields: ['note'], values: [...TEXT, ...NOTHING], why: FREE_TEXT },
	{
		at: 'incidents/new ?/default',
		fields: ['job'],
		values: ['not a number', 'infinite', 'beyond any number', 'constructor', 'no day', 'last day of all'],
		why: 'a shop numbers its jobs as it likes: letters, digits and a few signs'
	},
	{
		at: 'incidents/new ?/default',
		fields: ANY,
		values: NOTHING,
		why: UNKNOWN
	},
	{
		at: 'incidents/new ?/default',
		fields: ['cap-pressure'],
		values: ['pressure'],
		why: 'it is a pressure'
	},
	{ at: CARD, fields: /^(ticket|customer|shelf\.lot|parts\.0\.name)$/, values: TEXT, why: FREE_TEXT },
	{
		at: CARD,
		fields:
			/^(film\.m..|writtenCap|parts\.0\.tempered|blastedAgo|residueLoops|readings\..|shelf\.leftOverAge|bench\.(compressor|strainers))$/,
		values: NOTHING,
		why: UNKNOWN
	},
	{ at: CARD, fields: ['bench.handlePressure'], values: ['pressure'], why: 'it is a pressure' },
	{
		at: CARD,
		fields: ['shelf.expires', 'shelf.hardenerExpires'],
		values: ['last day of all'],
		why: 'a can may keep for long'
	},
	{ at: 'practice/[attempt] ?/check', fields: ANY, values: ['blanks', 'pressure'], why: ASKED },
	{ at: 'practice/[attempt] ?/next', fields: ANY, values: ['blanks', 'pressure'], why: ASKED },
	{ at: 'practice/[attempt] ?/finish', fields: ANY, values: ['blanks', 'pressure'], why: ASKED },
	{ at: 'proving/[run]/[drill] ?/review', fields: ANY, values: ['blanks', 'pressure'], why: ASKED },
	{ at: 'proving/[run]/[drill] ?/save', fields: ANY, values: ['blanks', 'pressure'], why: ASKED },
	{ at: 'shop/values/[value] ?/default', fields: ['reason'], values: TEXT, why: FREE_TEXT },
	{
		at: 'shop/values/[value] ?/default',
		fields: ['min', 'max'],
		values: ['pressure'],
		why: 'the value is a pressure'
	},
	{ at: 'shop/values/gear ?/default', fields: ['reason'], values: TEXT, why: FREE_TEXT },
	{ at: 'shop/values/[value] ?/default', fields: ['from'], values: ['last day of all'], why: LATER },
	{ at: 'shop/values/gear ?/default', fields: ['from'], values: ['last day of all'], why: LATER },
	{ at: 'shop/import-sheet ?/default', fields: ['effective'], values: ['last day of all'], why: LATER },
	{ at: 'shop/scheme ?/default', fields: ['effective'], values: ['last day of all'], why: LATER },
	{ at: 'setup ?/default', fields: ['shop', 'lead'], values: TEXT, why: 'a name is whatever one is called' },
	{ at: EDIT, fields: /^(effective|commonFrom)$|\.from$/, values: ['last day of all'], why: LATER },
	{ at: EDIT, fields: /^(title|rubSolvent)$|\.read$/, values: TEXT, why: FREE_TEXT },
	{
		at: EDIT,
		fields: ['commonRead'],
		values: names,
		why: 'read where a line has no source of its own: here all have'
	},
	{
		at: EDIT,
		fields: /\.memory$/,
		values: names,
		why: 'a box is ticked with its own word, or is not ticked'
	},
	{
		at: EDIT,
		fields: /^(cap-pressure|distance|fume-above)\.(value|min|max)$/,
		values: NOTHING,
		why: 'the sheet is silent on these'
	},
	{
		at: EDIT,
		fields: /^(cap-pressure|distance|fume-above)\.(unit|from|read)$/,
		values: names,
		why: 'the sheet is silent on these: of a line without a number nothing else is read'
	},
	{ at: EDIT, fields: ['storage.min'], values: ['negative'], why: 'a store may be below freezing' },
	{
		at: 'shop/import-sheet ?/default',
		fields: ['file'],
		values: names,
		why: 'a text where a file belongs is no file, and the pasted text is read'
	},
	{
		at: 'shop/people/new ?/default',
		fields: ['name'],
		values: TEXT,
		why: 'a name is whatever one is called'
	},
	{
		at: 'shop/people/[person] ?/secret',
		fields: ['secret', 'again'],
		values: PASSPHRASES,
		together: true,
		why: 'a passphrase may be any text, typed twice'
	}
];

/**
 * Whether a value is right in a field, odd as it looks.
 * @param together whether every other field holds it too
 */
export const isValidAfterAll = (at: string, field: string, value: ValueName, together: boolean): boolean =>
	VALID.some(
		(one) =>
			one.at === at &&
			(one.fields instanceof RegExp ? one.fields.test(field) : one.fields.includes(field)) &&
			one.values.includes(value) &&
			(together || !one.together)
	);

/** Form actions of one's own that a form without any field is right for. */
const NEEDS_NOTHING = {
	'practice/[attempt] ?/check': 'a station with nothing filled in may be checked: its findings say so',
	'practice/[attempt] ?/next': 'practice never counts, and one may go on',
	'practice/[attempt] ?/finish': 'practice never counts, and one may stop',
	'proving/[run]/[drill] ?/save': 'answers may be left for later',
	'proving/[run]/[drill] ?/review': 'answers may be left out'
};

/** Form actions that are a button and nothing else: whatever else is sent is not looked at. */
const READS_NOTHING = {
	'proving/[run] ?/default': 'asks for the next ticket',
	'proving/[run]/[drill] ?/handin': 'hands in what was kept before'
};

/** The same for everybody. */
const READS_NOTHING_OF_ANYBODY = { 'sign-out ?/default': 'there is nothing to get wrong about leaving' };

export const needsNothing = (at: string, own: boolean): boolean => own && at in NEEDS_NOTHING;
export const readsNothing = (at: string, own: boolean): boolean =>
	at in READS_NOTHING_OF_ANYBODY || (own && at in READS_NOTHING);

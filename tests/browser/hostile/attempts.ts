import { allFiles, BROKEN, json, tooLarge, urlEncoded, type Body, type Fields } from './bodies';
import type { Entries } from './page-form';
import type { Asked } from './send';
import { isValidAfterAll, needsNothing, readsNothing } from './valid-after-all';
import { UNKNOWN_NAMES, valueNamed, VALUES } from './values';

/** One hostile request. */
export type Attempt = { readonly what: string; readonly asked: Asked };

/** A form action at a real address, as one sender finds it. */
export type Target = {
	/** Route and action as the lists of exceptions name them. */
	readonly at: string;
	readonly action: string;
	/** Path and query of the page. */
	readonly path: string;
	readonly origin: string;
	readonly headers: Readonly<Record<string, string>>;
	/** Names of the fields, whoever was shown them. */
	readonly names: readonly string[];
	/** Those of several boxes to tick. */
	readonly boxes: readonly string[];
	/** The form as this sender is shown it, filled in right; undefined where the page has none for them. */
	readonly filled: Entries | undefined;
	/** Whether the page has any form for this sender: the work on it is theirs. */
	readonly own: boolean;
};

/** Up to so many fields, each gets every value while the others are right; beyond, each gets a few values in turn. */
const FEW_FIELDS = 6;
const IN_TURN = 2;
/** Huge values in so many fields are as much as the server takes; more than that is tried by itself. */
const HUGE_AT_ONCE = 4;

const actionPath = (path: string, action: string): string =>
	action === 'default' ? path : `${path}${path.includes('?') ? '&' : '?'}/${action}`;

/** A form action asked for with a body. */
export const post = ({ path, action, origin, headers }: Target, { type, bytes }: Body): Asked => ({
	method: 'POST',
	path: actionPath(path, action),
	headers: {
		...headers,
		origin,
		'content-length': String(Buffer.byteLength(bytes)),
		...(type ? { 'content-type': type } : {})
	},
	body: bytes
});

/** Every field with the same value. */
function wholeForms(target: Target): Attempt[] {
	const { at, names } = target;
	if (names.length === 0) return [];
	return VALUES.filter(({ name }) => !names.every((field) => isValidAfterAll(at, field, name, true))).map(
		(value) => {
			const some = value.name === 'huge' ? names.slice(0, HUGE_AT_ONCE) : names;
			const fields = some.map((field) => [field, value] as const);
			return { what: `every field ${value.name}`, asked: post(target, urlEncoded(fields)) };
		}
	);
}

const valuesFor = (index: number, fields: number) =>
	fields <= FEW_FIELDS
		? VALUES
		: Array.from({ length: IN_TURN }, (_, turn) => VALUES[(index * IN_TURN + turn) % VALUES.length]!);

/** The form filled in right but for one field. */
function oneWrong(target: Target): Attempt[] {
	const { at, names, filled } = target;
	if (!filled) return [];
	const stands = (field: string) => filled.filter(([name]) => name === field).map(([, value]) => value);
	return names.flatMap((field, index) =>
		valuesFor(index, names.length)
			.filter(({ name, text }) => !isValidAfterAll(at, field, name, false) && stands(field).join() !== text)
			.map((value) => {
				const fields: Fields = [...filled.filter(([name]) => name !== field), [field, value]];
				return { what: `${field}: ${value.name}`, asked: post(target, urlEncoded(fields)) };
			})
	);
}

/** The form filled in right, with one box ticked that it does not have. */
function oneBoxMore(target: Target): Attempt[] {
	const { boxes, filled } = target;
	if (!filled) return [];
	return boxes.map((field) => ({
		what: `one box more in ${field}`,
		asked: post(target, urlEncoded([...filled, [field, valueNamed('script')]]))
	}));
}

/** Forms with fields as no form of ours has them. */
function oddForms(target: Target): Attempt[] {
	const { at, names, own } = target;
	const twice: Fields = names.flatMap((field) => [
		[field, valueNamed('script')] as const,
		[field, valueNamed('negative')] as const
	]);
	const unfilled = {
		'no field': urlEncoded([]),
		'unknown fields': urlEncoded(UNKNOWN_NAMES.map((name) => [name, 'lead']))
	};
	const repeated = { 'every field twice': urlEncoded(twice), 'every field a file': allFiles(names) };
	const isFreeText = names.every((field) => isValidAfterAll(at, field, 'script', true));
	const bodies = { ...(needsNothing(at, own) ? {} : unfilled), ...(isFreeText ? {} : repeated) };
	return Object.entries(bodies).map(([what, body]) => ({ what, asked: post(target, body) }));
}

/** Bodies that are no form at all. */
const noForms = (target: Target): Attempt[] =>
	Object.entries({ JSON: json(target.filled ?? []), ...BROKEN }).map(([what, body]) => ({
		what,
		asked: post(target, body)
	}));

/** The form filled in right, sent from somewhere else. */
function fromElsewhere(target: Target): Attempt[] {
	const asked = post(target, urlEncoded(target.filled ?? []));
	const unsigned = Object.fromEntries(Object.entries(asked.headers).filter(([name]) => name !== 'origin'));
	const elsewhere = 'http://hostile.invalid';
	return Object.entries({
		'another site': { ...unsigned, origin: elsewhere },
		'an opaque origin': { ...unsigned, origin: 'null' },
		nowhere: unsigned,
		'another site by its referrer': { ...unsigned, referer: `${elsewhere}/` }
	}).map(([from, headers]) => ({ what: `from ${from}`, asked: { ...asked, headers } }));
}

/** The same hostile set for every form action. */
export const hostileSet = (target: Target): Attempt[] => [
	...(readsNothing(target.at, target.own)
		? []
		: [...wholeForms(target), ...oneWrong(target), ...oneBoxMore(target), ...oddForms(target)]),
	...noForms(target),
	...fromElsewhere(target)
];

/** A few of them, for an action met before at another place. */
export const shortSet = (target: Target): Attempt[] =>
	readsNothing(target.at, target.own)
		? []
		: [...wholeForms(target).filter((_, index) => index % 8 === 0), ...oddForms(target)];

/** What is hostile about a page as a whole, whatever its actions: those it does not have, a language there is not. */
export function aroundActions(target: Target): Attempt[] {
	const right = urlEncoded(target.filled ?? []);
	const to = (action: string) => ({ what: `action ${action}`, asked: post({ ...target, action }, right) });
	const foreign = { ...target, path: target.path.replace(/^\/\w+/, '/xx') };
	return [
		...['nope', 'constructor', '__proto__', '../../sign-out', '%00'].map(to),
		{ what: 'language xx', asked: post(foreign, right) },
		{ what: 'more than is taken', asked: post(target, tooLarge) }
	];
}

/** The form filled in right, for an address that is none. */
export const astray = (target: Target): Attempt => ({
	what: 'an address that is none',
	asked: post(target, urlEncoded(target.filled ?? []))
});

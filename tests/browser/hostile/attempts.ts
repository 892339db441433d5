import { allFiles, BROKEN, json, urlEncoded, type Body, type Fields } from './bodies';
import type { PageForm } from './page-form';
import type { Asked } from './send';
import { isValidAfterAll, needsNothing } from './valid-after-all';
import { UNKNOWN_NAMES, VALUES } from './values';

/** One hostile post. */
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
	/** The form as this sender is shown it, filled in right; undefined where the page has none for them. */
	readonly filled: PageForm['entries'] | undefined;
};

/** A form with more fields than this gets one hostile value per field in turn instead of every value. */
const MANY_FIELDS = 30;
/** The huge values together would exceed what the server takes: what it does then is tried once, below. */
const MOST_AT_ONCE = 4;

export const actionPath = (path: string, action: string): string =>
	action === 'default' ? path : `${path}${path.includes('?') ? '&' : '?'}/${action}`;

const post = ({ path, action, origin, headers }: Target, { type, bytes }: Body): Asked => ({
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

const isHuge = (name: string) => name.startsWith('huge');

/** Every field with the same value. */
function wholeForms(target: Target): Attempt[] {
	const { at, names } = target;
	return VALUES.filter(({ name }) => !names.every((field) => isValidAfterAll(at, field, name))).map((value) => {
		const some = isHuge(value.name) ? names.slice(0, MOST_AT_ONCE) : names;
		const fields = some.map((field) => [field, value] as const);
		return { what: `every field ${value.name}`, asked: post(target, urlEncoded(fields)) };
	});
}

/** The form filled in right but for one field. */
function oneWrong(target: Target): Attempt[] {
	const { at, names, filled } = target;
	if (!filled) return [];
	const stands = (field: string) => filled.filter(([name]) => name === field).map(([, value]) => value);
	return names.flatMap((field, index) => {
		const values = names.length > MANY_FIELDS ? [VALUES[index % VALUES.length]!] : VALUES;
		return values
			.filter(({ name, text }) => !isValidAfterAll(at, field, name) && stands(field).join() !== text)
			.map((value) => {
				const fields: Fields = [...filled.filter(([name]) => name !== field), [field, value]];
				return { what: `${field}: ${value.name}`, asked: post(target, urlEncoded(fields)) };
			});
	});
}

/** Bodies that are no form of ours, whatever the fields. */
function oddShapes(target: Target): Attempt[] {
	const { at, names, filled } = target;
	const [script, negative] = ['script', 'negative'].map((one) => VALUES.find(({ name }) => name === one)!);
	const twice: Fields = names.flatMap((field) => [[field, script!] as const, [field, negative!] as const]);
	const forms: Record<string, Body> = {
		empty: urlEncoded([]),
		'unknown fields': urlEncoded(UNKNOWN_NAMES.map((name) => [name, 'lead']))
	};
	const bodies: Record<string, Body> = {
		...(needsNothing(at, filled !== undefined) ? {} : forms),
		...(names.every((field) => isValidAfterAll(at, field, 'script'))
			? {}
			: { 'every field twice': urlEncoded(twice), 'every field a file': allFiles(names) }),
		'JSON instead of a form': json(filled ?? []),
		...BROKEN
	};
	return Object.entries(bodies).map(([what, body]) => ({ what, asked: post(target, body) }));
}

/** The form filled in right, sent from somewhere else. */
function fromElsewhere(target: Target): Attempt[] {
	const right = urlEncoded(target.filled ?? []);
	const { origin: _, ...withoutOrigin } = post(target, right).headers;
	return [
		{ what: 'from another site', asked: post({ ...target, origin: 'http://hostile.invalid' }, right) },
		{ what: 'from an opaque origin', asked: post({ ...target, origin: 'null' }, right) },
		{ what: 'from nowhere', asked: { ...post(target, right), headers: withoutOrigin } },
		{
			what: 'with a referrer from elsewhere',
			asked: { ...post(target, right), headers: { ...withoutOrigin, referer: 'http://hostile.invalid/' } }
		}
	];
}

/** Actions no page has, names of JavaScript's own among them, and a language there is none of. */
function toNowhere(target: Target): Attempt[] {
	const right = urlEncoded(target.filled ?? []);
	const to = (action: string) => ({ what: `action ${action}`, asked: post({ ...target, action }, right) });
	const foreign = { ...target, path: target.path.replace(/^\/\w+/, '/xx') };
	return [
		...['nope', 'constructor', '__proto__', '../../sign-out', '%00'].map(to),
		{ what: 'language xx', asked: post(foreign, right) }
	];
}

/** The same hostile set for every form action, at a real address. */
export const attemptsAt = (target: Target): Attempt[] => [
	...wholeForms(target),
	...oneWrong(target),
	...oddShapes(target),
	...fromElsewhere(target),
	...toNowhere(target)
];

/** The form filled in right, at an address that is none. */
export const attemptAtNoPlace = (target: Target): Attempt => ({
	what: `at ${target.path.slice(0, 80)}`,
	asked: post(target, urlEncoded(target.filled ?? []))
});

/** One thing to type that no field of ours should take as it stands, or only as plain text. */
export type Value = {
	readonly name: string;
	readonly text: string;
	/** Bytes for a form body, percent-encoded, where they are no text. */
	readonly encoded?: string;
};

const BIG = 100_000;

/** The same set for every field. */
export const VALUES = [
	{ name: 'nothing', text: '' },
	{ name: 'blanks', text: ' \u00a0\u2003\t ' },
	{ name: 'huge', text: 'a'.repeat(BIG) },
	{ name: 'negative', text: '-1' },
	{ name: 'not a number', text: 'NaN' },
	{ name: 'infinite', text: 'Infinity' },
	{ name: 'beyond any number', text: '1e400' },
	{ name: 'pressure', text: '85 psi' },
	{ name: 'ambiguous ounces', text: '2 oz' },
	{ name: 'colder than cold', text: '-500 °C' },
	{ name: 'script', text: '<script>alert("hostile")</script>"\'><img src=x onerror=alert(1)>' },
	{ name: 'SQL', text: "' OR 1=1; DROP TABLE people; --" },
	{ name: 'null byte', text: 'mixing\0' },
	{ name: 'lone surrogate', text: '\ufffd', encoded: 'mixing%ED%A0%80' },
	{ name: 'right to left', text: '\u202egnp.exe\u202c' },
	{ name: 'path', text: '../../../etc/passwd' },
	{ name: 'prototype', text: '__proto__' },
	{ name: 'constructor', text: 'constructor' },
	{ name: 'no day', text: '2026-02-30' },
	{ name: 'last day of all', text: '9999-12-31' },
	{ name: 'formula', text: '=HYPERLINK("http://x.invalid","here")' },
	{ name: 'line break', text: 'yes\r\nset-cookie: hostile=1' }
] as const satisfies readonly Value[];

export type ValueName = (typeof VALUES)[number]['name'];

export const valueNamed = (wanted: ValueName): Value => VALUES.find(({ name }) => name === wanted)!;

/** Fields that no form of ours has, and names that mean something to JavaScript itself. */
export const UNKNOWN_NAMES = [
	'__proto__',
	'constructor',
	'toString',
	'person[]',
	'a.b.c',
	'actor',
	''
] as const;

/** What stands in an address where an id belongs, percent-encoded, wrongly too. */
export const IDS = [
	'00000000-0000-4000-8000-000000000000',
	'-1',
	'NaN',
	'__proto__',
	'constructor',
	'toString',
	'..%2F..%2F..%2Fetc%2Fpasswd',
	'%2e%2e%5Cjournal.jsonl',
	'%00',
	'%ED%A0%80',
	'%E0%A4%A',
	'%3Cscript%3Ealert(%22hostile%22)%3C%2Fscript%3E',
	"'%20OR%201%3D1%3B%20--",
	'%E2%80%AEgnp.exe',
	'a'.repeat(2000)
] as const;

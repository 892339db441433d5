import type { Value } from './values';

/** Fields as they are to be sent: names with what is typed into them, in order, repeated where repeated. */
export type Fields = readonly (readonly [name: string, value: string | Value])[];

export type Body = { readonly type: string | null; readonly bytes: string | Buffer };

const encoded = (value: string | Value) =>
	typeof value === 'string' ? encodeURIComponent(value) : (value.encoded ?? encodeURIComponent(value.text));

export const urlEncoded = (fields: Fields): Body => ({
	type: 'application/x-www-form-urlencoded',
	bytes: fields.map(([name, value]) => `${encodeURIComponent(name)}=${encoded(value)}`).join('&')
});

const BOUNDARY = 'hostile-7f3a';

/** Every field an upload, where text belongs. */
export const allFiles = (names: readonly string[]): Body => ({
	type: `multipart/form-data; boundary=${BOUNDARY}`,
	bytes: `${names
		.map(
			(name) =>
				`--${BOUNDARY}\r\ncontent-disposition: form-data; name="${name}"; filename="../../journal.jsonl"\r\n` +
				'content-type: application/octet-stream\r\n\r\n{"not": a sheet\0}\r\n'
		)
		.join('')}--${BOUNDARY}--\r\n`
});

export const json = (fields: Fields): Body => ({
	type: 'application/json',
	bytes: JSON.stringify(Object.fromEntries(fields.map(([name, value]) => [name, value])))
});

/** Bodies that claim to be what they are not, by name. */
export const BROKEN: Readonly<Record<string, Body>> = {
	'no content type': { type: null, bytes: 'a=b' },
	'plain text': { type: 'text/plain', bytes: 'a=b' },
	'multipart without boundary': { type: 'multipart/form-data', bytes: 'a=b' },
	'multipart cut short': {
		type: `multipart/form-data; boundary=${BOUNDARY}`,
		bytes: `--${BOUNDARY}\r\ncontent-disposition: form-data; name="a"\r\n\r\nb`
	},
	'an unknown type': { type: 'application/x-hostile', bytes: Buffer.from([0xff, 0xfe, 0x00, 0x80]) }
};

/** A form beyond what the server takes at all. */
export const tooLarge: Body = {
	type: 'application/x-www-form-urlencoded',
	bytes: `note=${'a'.repeat(600_000)}`
};

import canonicalize from 'canonicalize';
import type { Json } from './json';

/**
 * The one canonical text of a JSON value (RFC 8785: keys by UTF-16 unit, shortest numbers, no white space).
 * @throws if the value has none: NaN, an infinity, a lone surrogate.
 */
export function canonical(value: Json): string {
	const text = canonicalize(value);
	if (text === undefined) throw new TypeError('only JSON values have a canonical text');
	return text;
}

import { canonical } from './canonical';
import type { Json } from './json';
import { sha256 } from './sha256';

/** Stands where the hash of an earlier entry would, in the first one. */
export const NOTHING_BEFORE = '0'.repeat(64);

/** Hash of a chained entry: SHA-256 of its canonical text, `prev` in it and `hash` not. */
export function hashOf(entry: { readonly [key: string]: Json }): string {
	return sha256(canonical(Object.fromEntries(Object.entries(entry).filter(([key]) => key !== 'hash'))));
}

/** The line for an entry that does not yet have its hash. */
export function seal(entry: { readonly [key: string]: Json; readonly prev: string }): string {
	return canonical({ ...entry, hash: hashOf(entry) });
}

import { canonical } from './canonical';
import type { Json } from './json';
import { sha256 } from './sha256';

/** Names a JSON value by its content: SHA-256 of its canonical text. Equal values have equal hashes. */
export const contentHash = (value: Json): string => sha256(canonical(value));

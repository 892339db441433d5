import { randomBytes, scrypt, timingSafeEqual, type ScryptOptions } from 'node:crypto';
import * as v from 'valibot';

const HASH_BYTES = 32;
const SALT_BYTES = 16;

/** How much work one guess costs. Stored with each secret, so that it can be raised later without locking anybody out. */
export interface ScryptCost {
	/** CPU and memory cost, a power of two. */
	n: number;
	/** Block size. */
	r: number;
	/** Parallelisation. */
	p: number;
}

/**
 * 32 MB for each guess. Source: OWASP Password Storage Cheat Sheet, scrypt, the row N = 2^15, r = 8, p = 3
 * (from memory).
 */
export const SCRYPT_COST: ScryptCost = { n: 2 ** 15, r: 8, p: 3 };

const base64 = (bytes: number) =>
	v.pipe(
		v.string(),
		v.base64(),
		v.check((text) => Buffer.from(text, 'base64').length === bytes, `must be ${bytes} bytes`)
	);

/** A secret as it is kept: never the secret, only what it takes to recognise it. */
export const StoredSecret = v.object({
	algorithm: v.literal('scrypt'),
	n: v.pipe(
		v.number(),
		v.integer(),
		v.minValue(2),
		v.maxValue(2 ** 18),
		v.check((n) => Number.isInteger(Math.log2(n)), 'must be a power of two')
	),
	r: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(16)),
	p: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(16)),
	salt: base64(SALT_BYTES),
	hash: base64(HASH_BYTES)
});
export type StoredSecret = v.InferOutput<typeof StoredSecret>;

const derive = (secret: string, salt: Buffer, { n, r, p }: ScryptCost): Promise<Buffer> => {
	const options: ScryptOptions = { N: n, r, p, maxmem: 256 * r * (n + p + 2) };
	// NFKC: the same passphrase typed on two keyboards may arrive as different code points for one accented letter
	return new Promise((resolve, reject) =>
		scrypt(secret.normalize('NFKC'), salt, HASH_BYTES, options, (error, key) =>
			error ? reject(error) : resolve(key)
		)
	);
};

/** Turns a secret into what may be kept, with a salt of its own. */
export const hashSecret = async (secret: string, cost: ScryptCost): Promise<StoredSecret> => {
	const salt = randomBytes(SALT_BYTES);
	const hash = await derive(secret, salt, cost);
	return { algorithm: 'scrypt', ...cost, salt: salt.toString('base64'), hash: hash.toString('base64') };
};

/** Whether a secret is the kept one; takes the same time however much of it is right. */
export const matchesSecret = async (secret: string, kept: StoredSecret): Promise<boolean> =>
	timingSafeEqual(
		await derive(secret, Buffer.from(kept.salt, 'base64'), kept),
		Buffer.from(kept.hash, 'base64')
	);

import { readFile } from 'node:fs/promises';
import * as v from 'valibot';
import { replaceFile } from './atomic-file';
import { hashSecret, matchesSecret, SCRYPT_COST, StoredSecret, type ScryptCost } from './scrypt';
import { StartRefused } from './start-refused';

const SecretsFile = v.object({ version: v.literal(1), people: v.record(v.string(), StoredSecret) });

/** PINs and passphrases by person id. Kept beside the journal, never in it: a secret can be changed and forgotten. */
export interface Secrets {
	/** Whether the person has a secret at all. */
	has(person: string): boolean;
	/** Sets or replaces a secret. On disk when the promise resolves; on failure the old one stays. */
	set(person: string, secret: string): Promise<void>;
	/** Whether the secret is the person's. Takes as long for an unknown person as for a wrong secret. */
	verify(person: string, secret: string): Promise<boolean>;
	/** Forgets the person's secret, so that nobody can sign in as them. */
	remove(person: string): Promise<void>;
}

const readPeople = async (path: string): Promise<Map<string, StoredSecret>> => {
	let text: string;
	try {
		text = await readFile(path, 'utf8');
	} catch (error) {
		if ((error as NodeJS.ErrnoException).code === 'ENOENT') return new Map();
		throw error;
	}
	try {
		return new Map(Object.entries(v.parse(SecretsFile, JSON.parse(text)).people));
	} catch (cause) {
		throw new StartRefused(`The secrets file ${path} is damaged. Restore it from a backup.`, { cause });
	}
};

/**
 * Opens the secrets file; a missing one means nobody has a secret yet.
 * @param cost work for each guess on secrets set from now on
 * @throws StartRefused when the file is there but cannot be understood
 */
export const openSecrets = async (path: string, cost: ScryptCost = SCRYPT_COST): Promise<Secrets> => {
	let people = await readPeople(path);
	const nobody = await hashSecret('', cost);
	let queue: Promise<unknown> = Promise.resolve();

	const change = (edit: (next: Map<string, StoredSecret>) => void): Promise<void> => {
		const run = queue.then(async () => {
			const next = new Map(people);
			edit(next);
			const file = { version: 1, people: Object.fromEntries(next) };
			await replaceFile(path, JSON.stringify(file, null, '\t') + '\n');
			people = next;
		});
		queue = run.catch(() => {});
		return run;
	};

	return {
		has: (person) => people.has(person),
		async set(person, secret) {
			const kept = await hashSecret(secret, cost);
			await change((next) => next.set(person, kept));
		},
		async verify(person, secret) {
			const kept = people.get(person);
			const matches = await matchesSecret(secret, kept ?? nobody);
			return kept !== undefined && matches;
		},
		remove: (person) => change((next) => next.delete(person))
	};
};

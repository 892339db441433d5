import type { Adapter } from 'lowdb';
import { randomInt } from 'node:crypto';
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { accept, endsAct, Journal, type State } from '$lib/records';
import { openCookieKey } from './cookie-key';
import { openDrafts, type Drafts } from './drafts';
import { ErasableStore } from './erasable-store';
import { erasures } from './erasures';
import { JournalFile } from './journal-file';
import { requirements } from './requirements';
import type { ScryptCost } from './scrypt';
import { openSecrets, type Secrets } from './secrets';
import { createSessions, type Sessions } from './sessions';
import type { Settings } from './settings';
import { createSetupCode } from './setup-code';
import { ADDRESS_PATIENCE, createThrottle, PERSON_PATIENCE, type Throttle } from './throttle';

const MINUTE = 60_000;

/** The running program: everything a request needs that is not in the request. */
export interface App {
	readonly settings: Settings;
	readonly journal: Journal;
	/** Names and free text, which the journal only points at. */
	readonly texts: ErasableStore;
	/** Work in hand that is not in the record yet. */
	readonly drafts: Drafts;
	readonly secrets: Secrets;
	readonly sessions: Sessions;
	/** Wrong secrets and codes, by person and by address. */
	readonly wrongTries: { readonly person: Throttle; readonly address: Throttle };
	/** Seals sign-in cookies. */
	readonly cookieKey: Buffer;
	/** What the first visitor has to know to set up the shop; a new one at each start. */
	readonly setupCode: string;
	/** Bytes of a torn end that were cut off the journal at this start; 0 as a rule. */
	readonly repairedBytes: number;
	/** The one clock. */
	now(): Date;
	/** The one source of chance: a whole number from 0 to 2^32 − 1 that nobody can foresee. */
	seed(): number;
	/** Lets go of the data folder. */
	close(): Promise<void>;
}

/** What a test puts in place of disk, clock, chance and slow hashing. */
export interface AppParts {
	journal?: Adapter<string[]>;
	now?: () => Date;
	seed?: () => number;
	scryptCost?: ScryptCost;
}

/** Opens the store of names and texts, and finishes an erasure that a power cut came in between of. */
const openTexts = async (path: string, state: State): Promise<ErasableStore> => {
	const texts = await ErasableStore.open(path);
	await texts.erase(erasures(state));
	return texts;
};

/**
 * Opens the data folder and puts the program together.
 * @throws StartRefused when another program holds the folder or a file in it is damaged
 */
export const openApp = async (settings: Settings, parts: AppParts = {}): Promise<App> => {
	const now = parts.now ?? (() => new Date());
	const inFolder = (name: string) => join(settings.dataFolder, name);
	await mkdir(settings.dataFolder, { recursive: true, mode: 0o700 });

	// the journal comes first: its lock keeps other programs away from the whole folder
	const file = new JournalFile(inFolder('journal.jsonl'), endsAct);
	const journal = await Journal.open(parts.journal ?? file, { clock: now, requirements });
	try {
		if (file.cutBytes > 0)
			await journal.act(
				() => accept({ event: 'journal.repaired', data: { bytes: file.cutBytes } }),
				'program'
			);
		return {
			settings,
			journal,
			texts: await openTexts(inFolder('texts.json'), journal.state),
			drafts: await openDrafts(inFolder('drafts.json')),
			secrets: await openSecrets(inFolder('secrets.json'), parts.scryptCost),
			sessions: createSessions(settings.idleMinutes * MINUTE),
			wrongTries: {
				person: createThrottle(PERSON_PATIENCE),
				address: createThrottle(ADDRESS_PATIENCE)
			},
			cookieKey: await openCookieKey(inFolder('cookie.key')),
			setupCode: createSetupCode(),
			repairedBytes: file.cutBytes,
			now,
			seed: parts.seed ?? (() => randomInt(2 ** 32)),
			close: async () => file.close()
		};
	} catch (error) {
		file.close();
		throw error;
	}
};

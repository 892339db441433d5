import { readFile } from 'node:fs/promises';
import type { Json } from '$lib/records';
import { replaceFile } from './atomic-file';
import { StartRefused } from './start-refused';

/**
 * Work in hand that is not yet part of the record: half-filled set-up sheets, tries at a lesson's checks. One value per
 * key, on disk before `put` resolves, so that a person finds it again after signing out or a power cut.
 */
export type Drafts = {
	get<T extends Json>(key: string): T | undefined;
	put(key: string, value: Json): Promise<void>;
	drop(key: string): Promise<void>;
};

const read = async (path: string): Promise<Map<string, Json>> => {
	try {
		return new Map(Object.entries(JSON.parse(await readFile(path, 'utf8')) as Record<string, Json>));
	} catch (cause) {
		if ((cause as NodeJS.ErrnoException).code === 'ENOENT') return new Map();
		throw new StartRefused(
			`The file of drafts ${path} is damaged. Delete it: only unfinished work is lost.`,
			{ cause }
		);
	}
};

/** @throws StartRefused when the file is there but cannot be read */
export const openDrafts = async (path: string): Promise<Drafts> => {
	const drafts = await read(path);
	let queue: Promise<unknown> = Promise.resolve();
	const save = () => {
		const turn = queue.then(() => replaceFile(path, JSON.stringify(Object.fromEntries(drafts))));
		queue = turn.catch(() => undefined);
		return turn;
	};
	return {
		get: <T extends Json>(key: string) => drafts.get(key) as T | undefined,
		put: (key, value) => {
			drafts.set(key, value);
			return save();
		},
		drop: async (key) => {
			if (drafts.delete(key)) await save();
		}
	};
};

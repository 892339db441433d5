import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { verify } from '$lib/records';

const linesOf = (text: string) => text.split('\n').filter(Boolean);

/** Watches the files of a data folder for anything that was entered or left behind. */
export function recordWatch(dataFolder: string) {
	const read = (name: string) => {
		const path = join(dataFolder, name);
		return existsSync(path) ? readFileSync(path, 'utf8') : '';
	};
	const journal = () => read('journal.jsonl');
	let seen = journal();

	return {
		/** Entries since the last look that are no refusals, as text; and entries that are gone or changed. */
		intruders(): string[] {
			const [before, now] = [seen, journal()];
			seen = now;
			if (!now.startsWith(before)) return ['the journal was rewritten'];
			if (now && !now.endsWith('\n')) return ['the journal ends in half a line'];
			return linesOf(now.slice(before.length)).filter(
				(line) => (JSON.parse(line) as { event: string }).event !== 'act.refused'
			);
		},
		entries: () => linesOf(journal()).length,
		/** Whether the chain of hashes is whole, as the program itself verifies it. */
		chain: () => verify(linesOf(journal())),
		/** Names, texts and secrets as they are kept; a refused act must not leave any of its own behind. */
		kept: () => ({ texts: read('texts.json'), secrets: read('secrets.json') })
	};
}

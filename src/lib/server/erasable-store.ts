import { randomBytes, randomUUID } from 'node:crypto';
import { mkdir, readFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import * as v from 'valibot';
import { sha256, type TextRef } from '$lib/records';
import { replaceFile } from './atomic-file';
import { StartRefused } from './start-refused';

const Kept = v.union([
	v.strictObject({ salt: v.string(), text: v.string() }),
	v.strictObject({ erasedOn: v.string() })
]);
type Kept = v.InferOutput<typeof Kept>;

const TextsFile = v.strictObject({ version: v.literal(1), texts: v.record(v.string(), Kept) });

async function readTexts(path: string): Promise<Map<string, Kept>> {
	let content: string;
	try {
		content = await readFile(path, 'utf8');
	} catch (error) {
		if ((error as NodeJS.ErrnoException).code === 'ENOENT') return new Map();
		throw error;
	}
	try {
		return new Map(Object.entries(v.parse(TextsFile, JSON.parse(content)).texts));
	} catch (cause) {
		throw new StartRefused(`The file of names and texts ${path} is damaged. Restore it from a backup.`, {
			cause
		});
	}
}

export type ErasableText =
	| { readonly state: 'kept'; readonly text: string; readonly lang: TextRef['lang'] }
	| { readonly state: 'erased'; readonly on: string }
	/** Not what the journal entry was bound to: somebody changed the store by hand. */
	| { readonly state: 'altered' }
	| { readonly state: 'missing' };

/**
 * Names and free text, apart from the journal so that they can be erased without touching it. The journal
 * holds a text's id and the hash of salt and text; the salt goes with the text, so the hash tells nothing after.
 * A backup made before an erasure still holds what was erased.
 */
export class ErasableStore {
	readonly #path: string;
	#texts: Map<string, Kept>;
	#queue: Promise<unknown> = Promise.resolve();

	private constructor(path: string, texts: Map<string, Kept>) {
		this.#path = path;
		this.#texts = texts;
	}

	/** @throws StartRefused when the file is there but cannot be understood */
	static async open(path: string): Promise<ErasableStore> {
		await mkdir(dirname(path), { recursive: true });
		return new ErasableStore(path, await readTexts(path));
	}

	/** Keeps a text and answers what the journal may hold of it. On disk before the answer comes. */
	async put(text: string, lang: TextRef['lang']): Promise<TextRef> {
		const id = randomUUID();
		const salt = randomBytes(16).toString('hex');
		await this.#change((texts) => texts.set(id, { salt, text }));
		return { text: id, hash: sha256(salt + text), lang };
	}

	read({ text: id, hash, lang }: TextRef): ErasableText {
		const kept = this.#texts.get(id);
		if (!kept) return { state: 'missing' };
		if ('erasedOn' in kept) return { state: 'erased', on: kept.erasedOn };
		if (sha256(kept.salt + kept.text) !== hash) return { state: 'altered' };
		return { state: 'kept', text: kept.text, lang };
	}

	/**
	 * Erases texts for good, salt and all. Given what the record says was erased, it also finishes an erasure
	 * that a power cut came in between of; what was erased before keeps its earlier day.
	 * @param days day of erasure by text id
	 */
	async erase(days: ReadonlyMap<string, string>): Promise<void> {
		const isKept = (id: string) => 'text' in (this.#texts.get(id) ?? {});
		if (![...days.keys()].some(isKept)) return;
		await this.#change((texts) => {
			for (const [id, erasedOn] of days) if (isKept(id)) texts.set(id, { erasedOn });
		});
	}

	/** Drops texts that no entry points at: those put for an act that was then refused. */
	drop(ids: Iterable<string>): Promise<void> {
		return this.#change((texts) => {
			for (const id of ids) texts.delete(id);
		});
	}

	#change(edit: (texts: Map<string, Kept>) => void): Promise<void> {
		const turn = this.#queue.then(async () => {
			const texts = new Map(this.#texts);
			edit(texts);
			const file = { version: 1, texts: Object.fromEntries(texts) };
			await replaceFile(this.#path, `${JSON.stringify(file, null, '\t')}\n`);
			this.#texts = texts;
		});
		this.#queue = turn.catch(() => undefined);
		return turn;
	}
}

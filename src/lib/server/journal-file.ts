import type { Adapter } from 'lowdb';
import { mkdir, open, type FileHandle } from 'node:fs/promises';
import { dirname } from 'node:path';
import { readJournalLines } from './journal-lines';
import { holdAlone } from './one-writer';
import { syncFolder } from './synced-folder';

/**
 * lowdb adapter for an append-only file of lines. `write` appends the lines past those already on disk and
 * returns when they are synced. Lines once written can be neither changed nor removed through it.
 */
export class JournalFile implements Adapter<string[]> {
	readonly #path: string;
	readonly #endsAct: (line: string) => boolean;
	#lock: { release: () => void } | null = null;
	#kept = 0;
	#last: string | null = null;
	#size = 0;
	#cut = 0;
	#unsure = false;

	/**
	 * @param endsAct whether a line may be the last one. Lines after the last that may are part of an act that
	 * was never acknowledged, and are cut off like a torn line.
	 */
	constructor(path: string, endsAct: (line: string) => boolean) {
		this.#path = path;
		this.#endsAct = endsAct;
	}

	/** Bytes that were cut off a torn end when the file was read; 0 for a clean one. */
	get cutBytes(): number {
		return this.#cut;
	}

	async read(): Promise<string[]> {
		await mkdir(dirname(this.#path), { recursive: true });
		this.#lock ??= holdAlone(this.#path);
		const { lines, size, torn } = await readJournalLines(this.#path);
		let whole = size;
		while (lines.length > 0 && !this.#endsAct(lines.at(-1)!)) whole -= Buffer.byteLength(lines.pop()!) + 1;
		this.#cut = torn + size - whole;
		if (this.#cut > 0) await this.#truncate(whole);
		this.#remember(lines, whole);
		return lines;
	}

	/** @throws if a kept line differs, if somebody else changed the file, or if the disk refuses; nothing is kept then */
	async write(lines: string[]): Promise<void> {
		if (!this.#lock) throw new Error('a journal file is read before it is written');
		if (lines.length < this.#kept || (this.#kept > 0 && lines[this.#kept - 1] !== this.#last))
			throw new Error(`${this.#path}: a kept line was changed or removed`);
		const tail = lines.slice(this.#kept);
		if (tail.some((line) => line.includes('\n'))) throw new Error('a line holds no line break');
		if (tail.length === 0) return;
		if (this.#unsure) await this.#truncate(this.#size);
		const bytes = Buffer.from(`${tail.join('\n')}\n`);
		await this.#append(bytes);
		this.#remember(lines, this.#size + bytes.length);
	}

	close(): void {
		this.#lock?.release();
		this.#lock = null;
	}

	async #append(bytes: Buffer): Promise<void> {
		const file = await open(this.#path, 'a', 0o600);
		try {
			const { size } = await file.stat();
			if (size !== this.#size) throw new Error(`${this.#path} was changed by another program`);
			this.#unsure = true;
			await file.appendFile(bytes);
			await file.sync();
			if (size === 0) await syncFolder(dirname(this.#path));
			this.#unsure = false;
		} catch (error) {
			if (this.#unsure) await this.#takeBack(file, error);
			throw error;
		} finally {
			await file.close();
		}
	}

	/** Cuts off what a failed append may have left; if even that fails, the next write begins with it. */
	async #takeBack(file: FileHandle, cause: unknown): Promise<void> {
		try {
			await file.truncate(this.#size);
			await file.sync();
			this.#unsure = false;
		} catch (error) {
			throw new AggregateError([cause, error], `${this.#path}: neither written nor taken back`, {
				cause: error
			});
		}
	}

	async #truncate(size: number): Promise<void> {
		const file = await open(this.#path, 'r+');
		try {
			await file.truncate(size);
			await file.sync();
		} finally {
			await file.close();
		}
		this.#unsure = false;
	}

	#remember(lines: string[], size: number): void {
		this.#kept = lines.length;
		this.#last = lines.at(-1) ?? null;
		this.#size = size;
	}
}

import { readFile } from 'node:fs/promises';

export interface JournalLines {
	/** Lines that were written to their end, without the line break. */
	readonly lines: string[];
	/** Bytes up to the end of the last of them. */
	readonly size: number;
	/** Bytes after that: the start of a line that a power cut left unfinished. */
	readonly torn: number;
}

/** Reads a journal file without changing it. A file that is not there yet is an empty journal. */
export async function readJournalLines(path: string): Promise<JournalLines> {
	let bytes: Buffer;
	try {
		bytes = await readFile(path);
	} catch (error) {
		if ((error as NodeJS.ErrnoException).code === 'ENOENT') return { lines: [], size: 0, torn: 0 };
		throw error;
	}
	const size = bytes.lastIndexOf(0x0a) + 1;
	const lines = size === 0 ? [] : bytes.toString('utf8', 0, size - 1).split('\n');
	return { lines, size, torn: bytes.length - size };
}

import { linkSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import * as v from 'valibot';
import { StartRefused } from './start-refused';

const Holder = v.object({
	pid: v.pipe(v.number(), v.integer(), v.minValue(1)),
	host: v.string(),
	boot: v.string()
});
type Holder = v.InferOutput<typeof Holder>;

const held = new Set<string>();

function readIfThere(path: string): string | null {
	try {
		return readFileSync(path, 'utf8');
	} catch (error) {
		if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
		throw error;
	}
}

/** Only Linux tells one start of the computer from another in a file; elsewhere the pid alone has to do. */
const thisProgram = (): Holder => ({
	pid: process.pid,
	host: hostname(),
	boot: readIfThere('/proc/sys/kernel/random/boot_id')?.trim() ?? ''
});

function isRunning(pid: number): boolean {
	try {
		process.kill(pid, 0);
		return true;
	} catch (error) {
		return (error as NodeJS.ErrnoException).code === 'EPERM';
	}
}

/** A lock outlives its program after a power cut or a kill; its number may since belong to another program. */
function isStale(holder: Holder, own: Holder, path: string): boolean {
	if (holder.host !== own.host) return false;
	if (holder.boot !== own.boot) return true;
	// in a container every start gets the same pid: one with ours that we did not take is from the start before
	return holder.pid === own.pid ? !held.has(path) : !isRunning(holder.pid);
}

/** Makes the lock appear with its holder already in it, or answers false when there is one. */
function take(path: string, own: Holder): boolean {
	const draft = `${path}.${own.pid}`;
	writeFileSync(draft, `${JSON.stringify(own)}\n`, { mode: 0o600 });
	try {
		linkSync(draft, path);
		return true;
	} catch (error) {
		if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
		throw error;
	} finally {
		rmSync(draft);
	}
}

function readHolder(path: string): Holder | null {
	const text = readIfThere(path);
	if (text === null) return null;
	const holder = v.safeParse(v.pipe(v.string(), v.parseJson(), Holder), text);
	if (holder.success) return holder.output;
	throw new StartRefused(`${path} is damaged. If nothing else uses that folder, delete this file.`);
}

/**
 * Holds a file for this program alone, by a lock file beside it, until `release` or the end of the program.
 * A lock left by a program that is gone is taken over.
 * @throws StartRefused if another running program, or another part of this one, holds it
 */
export function holdAlone(file: string): { release: () => void } {
	const path = `${file}.lock`;
	const own = thisProgram();
	while (!take(path, own)) {
		const holder = readHolder(path);
		if (holder && !isStale(holder, own, path))
			throw new StartRefused(
				`${file} is in use by another program: process ${holder.pid} on ${holder.host}. Stop that one, ` +
					`or start with another DATA_DIR. If there is no such process any more, delete ${path}.`
			);
		rmSync(path, { force: true });
	}
	held.add(path);
	const release = () => {
		if (held.delete(path)) rmSync(path, { force: true });
		process.off('exit', release);
	};
	process.on('exit', release);
	return { release };
}

import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer, type AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const PATIENCE = 30_000;

async function freePort(): Promise<number> {
	const probe = createServer().listen(0, '127.0.0.1');
	await once(probe, 'listening');
	const { port } = probe.address() as AddressInfo;
	probe.close();
	await once(probe, 'close');
	return port;
}

export interface OwnServer {
	readonly url: string;
	/** The one-time code, as whoever started the program reads it off the console. */
	readonly code: string;
	/** Its data folder. */
	readonly folder: string;
	stop(): Promise<void>;
}

/** Starts the program on an empty data folder of its own and reads its console until it is open. */
export async function startOwnServer(): Promise<OwnServer> {
	const port = await freePort();
	const folder = mkdtempSync(join(tmpdir(), 'witness-fresh-'));
	const program = spawn(process.execPath, ['src/scripts/start.js'], {
		cwd: root,
		env: { ...process.env, PORT: String(port), HOST: '127.0.0.1', DATA_DIR: folder, WITNESS_DEMO: '' },
		stdio: ['ignore', 'pipe', 'pipe']
	});
	const ended = once(program, 'exit');
	const said = await new Promise<string>((resolve, reject) => {
		let text = '';
		const late = setTimeout(() => reject(new Error(`not open in time:\n${text}`)), PATIENCE);
		const hear = (piece: Buffer) => {
			text += piece.toString();
			if (!text.includes(`:${port}/`)) return;
			clearTimeout(late);
			resolve(text);
		};
		program.stdout.on('data', hear);
		program.stderr.on('data', hear);
		program.once('exit', (status) => reject(new Error(`ended with ${status}:\n${text}`)));
	});
	const code = /\b([0-9A-Z]{5}-[0-9A-Z]{5})\b/.exec(said)?.[1];
	if (!code) throw new Error(`no code on the console:\n${said}`);
	return {
		url: `http://127.0.0.1:${port}`,
		code,
		folder,
		stop: async () => {
			program.kill('SIGTERM');
			await ended;
			rmSync(folder, { recursive: true, force: true });
		}
	};
}

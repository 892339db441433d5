#!/usr/bin/env node
// Prints the path of a Chromium that can run the browser tests; installs one if there is none.
import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, realpathSync } from 'node:fs';
import { platform } from 'node:os';
import { fileURLToPath } from 'node:url';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];
const FIXED = [
	'/usr/bin/chromium',
	'/usr/bin/google-chrome',
	'/snap/bin/chromium',
	'/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
	'/Applications/Chromium.app/Contents/MacOS/Chromium'
];

/** @param {string | undefined} path */
const works = (path) =>
	path !== undefined &&
	existsSync(path) &&
	spawnSync(path, ['--version'], { timeout: 20_000, stdio: 'ignore' }).status === 0;
/** @param {string} name */
const onPath = (name) => {
	const r = spawnSync('sh', ['-c', `command -v ${name}`], { encoding: 'utf8' });
	return r.status === 0 ? r.stdout.trim() : undefined;
};
const bundled = async () => (await import('@playwright/test')).chromium.executablePath();

export async function findChromium() {
	if (process.env.CHROMIUM_PATH) {
		if (works(process.env.CHROMIUM_PATH)) return process.env.CHROMIUM_PATH;
		throw new Error(`CHROMIUM_PATH is set to ${process.env.CHROMIUM_PATH}, which does not run`);
	}
	return [...FIXED, ...NAMES.map(onPath), await bundled()].find(works);
}

function install() {
	const debian = existsSync('/etc/debian_version');
	// keep stdout for the path
	/** @type {import('node:child_process').ExecFileSyncOptions} */
	const log = { stdio: ['ignore', 2, 2], timeout: 9 * 60_000 };
	if (platform() === 'linux' && debian && process.getuid?.() === 0) {
		const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
		execFileSync('apt-get', ['update', '-q'], { ...log, env });
		execFileSync(
			'apt-get',
			['install', '-y', '-q', '--no-install-recommends', 'chromium', 'fonts-dejavu-core'],
			{ ...log, env }
		);
	} else {
		execFileSync('npx', ['playwright', 'install', 'chromium'], log);
	}
}

export async function ensureChromium() {
	let path = await findChromium();
	if (!path) {
		install();
		path = await findChromium();
	}
	if (!path) throw new Error('No Chromium found and none could be installed. Set CHROMIUM_PATH to one.');
	return path;
}

if (process.argv[1] && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url))
	ensureChromium().then(
		(p) => console.log(p),
		(e) => {
			console.error(e.message);
			process.exit(1);
		}
	);

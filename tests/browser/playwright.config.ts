import { defineConfig } from '@playwright/test';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ensureChromium } from './ensure-chromium.js';

// workers load this file again: they inherit the environment, so both are settled once
process.env.CHROMIUM_PATH ??= await ensureChromium();
process.env.TEST_DATA_DIR ??= mkdtempSync(join(tmpdir(), 'witness-'));
const root = fileURLToPath(new URL('../..', import.meta.url));
const inCache = (name: string) => join(root, 'node_modules/.cache', name);

/** Every project has a server, a port and a fresh demo shop of its own, so that journeys never meet. */
const projects = [
	{ name: 'pages', folder: 'pages' },
	{ name: 'journey-en', folder: 'journey', lang: 'en' },
	{ name: 'journey-es', folder: 'journey', lang: 'es' },
	{
		name: 'journey-without-script',
		folder: 'journey',
		lang: 'en',
		javaScriptEnabled: false
	},
	{ name: 'drills', folder: 'drills' },
	{ name: 'hostile', folder: 'hostile' },
	{ name: 'fresh', folder: 'fresh', fresh: true }
].map((project, at) => ({ ...project, port: Number(process.env.TEST_PORT ?? 4310) + at }));

/** Named with --project=… on the command line: only their servers are started. */
const named = process.argv.flatMap((argument) => /^--project=(.+)$/.exec(argument)?.[1] ?? []);
const served = named.length ? projects.filter(({ name }) => named.includes(name)) : projects;

export default defineConfig<{ lang: string; dataFolder: string }>({
	outputDir: inCache('playwright'),
	timeout: 120_000,
	// a page may take its time on a busy machine; what is tested is never how fast
	expect: { timeout: 15_000 },
	fullyParallel: false,
	workers: 2,
	forbidOnly: Boolean(process.env.CI),
	reporter: [['list'], ['json', { outputFile: inCache('playwright.json') }]],
	use: {
		actionTimeout: 30_000,
		navigationTimeout: 60_000,
		launchOptions: {
			executablePath: process.env.CHROMIUM_PATH,
			args: [
				...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
				'--disable-gpu',
				'--disable-quic',
				'--no-first-run',
				'--disable-background-networking',
				'--disable-component-update',
				'--disable-sync'
			]
		}
	},
	projects: projects.map(({ name, folder, port, lang = 'en', javaScriptEnabled = true }) => ({
		name,
		testDir: join(root, 'tests/browser', folder),
		use: {
			baseURL: `http://127.0.0.1:${port}`,
			viewport: { width: 1280, height: 800 },
			javaScriptEnabled,
			lang,
			dataFolder: join(process.env.TEST_DATA_DIR ?? '', name)
		}
	})),
	webServer: served.map(({ name, port, fresh }) => ({
		command: `node src/scripts/start.js${fresh ? '' : ' --demo'}`,
		cwd: root,
		url: `http://127.0.0.1:${port}/en/sign-in`,
		env: {
			PORT: String(port),
			HOST: '127.0.0.1',
			DATA_DIR: join(process.env.TEST_DATA_DIR ?? '', name)
		},
		stdout: 'pipe' as const,
		reuseExistingServer: false,
		gracefulShutdown: { signal: 'SIGTERM' as const, timeout: 3000 }
	}))
});

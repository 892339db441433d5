#!/usr/bin/env node
/*
 * Everything that has to be true before a change lands, in order, each step on its own; the last line adds up what the
 * test runners' own reports say. A step that fails is named and the rest still runs, so that one run shows everything.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const cache = join(root, 'node_modules/.cache');
const nodeReport = join(cache, 'vitest.json');
const browserReport = join(cache, 'playwright.json');

/** @param {string} name @param {string[]} command */
function step(name, command) {
	const started = Date.now();
	console.log(`\n== ${name}: ${command.join(' ')}`);
	const { status } = spawnSync('npx', command, {
		cwd: root,
		stdio: 'inherit',
		env: { ...process.env, NO_COLOR: '1' }
	});
	console.log(
		`== ${name}: ${status === 0 ? 'ok' : 'FAILED'} in ${Math.round((Date.now() - started) / 1000)} s`
	);
	return status === 0;
}

/** @param {string} path */
const read = (path) => JSON.parse(readFileSync(path, 'utf8'));

mkdirSync(cache, { recursive: true });
for (const report of [nodeReport, browserReport]) rmSync(report, { force: true });

const steps = [
	step('types of routes', ['svelte-kit', 'sync']),
	step('format', ['prettier', '--check', '.']),
	step('lint', [
		'eslint',
		'-c',
		'tests/lint/eslint.config.js',
		'src',
		'tests',
		'content',
		'vite.config.ts',
		'svelte.config.js'
	]),
	step('types', ['svelte-check', '--fail-on-warnings']),
	step('house, checks, behaviour', [
		'vitest',
		'run',
		'--reporter=default',
		'--reporter=json',
		`--outputFile.json=${nodeReport}`
	]),
	step('build', ['vite', 'build']),
	step('browser', ['playwright', 'test', '-c', 'tests/browser'])
];

const node = read(nodeReport);
const { stats } = read(browserReport);
const passed = node.numPassedTests + stats.expected;
// a flaky test needed a second try: that is not a pass
const failed = node.numFailedTests + stats.unexpected + stats.flaky + steps.filter((ok) => !ok).length;
const skipped = node.numPendingTests + node.numTodoTests + stats.skipped;
console.log(`\n${passed} passed, ${failed} failed${skipped ? `, ${skipped} skipped` : ''}`);
process.exit(failed ? 1 : 0);

import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** Builds the bench as the app is built: what a test runner wraps around imports would be timed otherwise. */
export default defineConfig({
	root: here('.'),
	resolve: { alias: { $lib: here('../../src/lib') } },
	build: {
		ssr: here('engine.ts'),
		outDir: here('../../node_modules/.cache/bench'),
		emptyOutDir: true,
		target: 'node20'
	}
});

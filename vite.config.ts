import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';

export default defineConfig({
	plugins: [sveltekit()],
	server: { fs: { allow: ['content'] } },
	build: {
		rolldownOptions: {
			checks: { pluginTimings: false },
			output: {
				codeSplitting: { groups: [{ name: 'every-page', test: /src.lib.(ui|i18n)/, minShareCount: 20 }] }
			}
		},
		// every link loads a page anew, and a page names its own scripts and styles: no list of those of all the others
		modulePreload: { resolveDependencies: () => [] }
	},
	test: {
		projects: [
			{
				extends: true,
				test: {
					name: 'node',
					environment: 'node',
					include: ['tests/{checks,behaviour,house}/**/*.test.ts'],
					benchmark: { include: ['tests/bench/**/*.bench.ts'] },
					testTimeout: 60_000,
					// pure modules: one load of the engine serves every file of a worker
					isolate: false
				}
			}
		]
	}
});

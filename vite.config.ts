import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';

export default defineConfig({
	plugins: [sveltekit()],
	server: { fs: { allow: ['content'] } },
	build: { rolldownOptions: { checks: { pluginTimings: false } } },
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

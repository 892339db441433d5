import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
	resolve: { alias: { $lib: fileURLToPath(new URL('../../src/lib', import.meta.url)) } },
	test: {
		testTimeout: 60_000,
		include: ['tests/checks/checks.test.ts', 'tests/behaviour/engine/{physics,grading}/**/*.test.ts']
	}
});

/*
 * Changes the formulas and the grading one operator at a time and asks the checks and tests whether they notice.
 * `npm run test:mutation`; the report lies in node_modules/.cache/mutation.
 */
export default {
	mutate: ['src/lib/engine/physics/**/*.ts', 'src/lib/engine/grading/**/*.ts'],
	testRunner: 'vitest',
	plugins: ['@stryker-mutator/vitest-runner'],
	vitest: { configFile: 'tests/mutation/vitest.config.ts', related: false },
	coverageAnalysis: 'perTest',
	// words are looked at by the house tests and by people, not by arithmetic
	mutator: { excludedMutations: ['StringLiteral'] },
	reporters: ['clear-text', 'json', 'html'],
	clearTextReporter: { allowColor: false, reportTests: false, allowEmojis: false },
	jsonReporter: { fileName: 'node_modules/.cache/mutation/report.json' },
	htmlReporter: { fileName: 'node_modules/.cache/mutation/report.html' },
	tempDirName: 'node_modules/.cache/mutation/sandbox',
	thresholds: { high: 95, low: 90, break: 90 },
	concurrency: 2,
	// tables and ranges are worked out once, when they are loaded: a change there would have to run every test anew
	ignoreStatic: true
};

import { test as base } from '@playwright/test';
import type { Lang } from '$lib/i18n';

/** What a project of playwright.config.ts sets for its tests. */
export const test = base.extend<{ lang: Lang; dataFolder: string }>({
	lang: ['en', { option: true }],
	dataFolder: ['', { option: true }]
});

export { expect } from '@playwright/test';

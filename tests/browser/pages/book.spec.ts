import { expect, test } from '@playwright/test';
import { Window } from 'happy-dom';
import { RULES } from '$lib/engine';
import { LANGS } from '$lib/i18n';
import { BANNED } from '../../house/banned-words';
import { bookVisits } from './book-visits';
import { signInAs } from './sign-in-as';
import { expectSoundInBoth } from './sound-in-both';

for (const [route, here] of Object.entries(bookVisits))
	test(`${route} is sound in both languages`, async ({ browser, baseURL }) => {
		test.setTimeout(600_000);
		for (const viewer of new Set(here.map(({ as }) => as))) {
			const page = await (await browser.newContext({ baseURL })).newPage();
			if (viewer === 'trainee') await signInAs(page, 'en', 'Luis Paredes');
			for (const { path } of here.filter(({ as }) => as === viewer)) await expectSoundInBoth(page, path);
			await page.context().close();
		}
	});

test('every rule has its page in both languages', async ({ request }) => {
	for (const lang of LANGS)
		for (const { id, title } of RULES) {
			const answer = await request.get(`/${lang}/rules/${id}`);
			expect.soft(answer.status(), id).toBe(200);
			const { document } = new Window();
			document.body.innerHTML = await answer.text();
			expect.soft(document.querySelector('h1')?.textContent, id).toBe(title[lang]);
			const words = document.querySelector('main')?.textContent ?? '';
			expect.soft(BANNED.exec(words)?.[0], `a word not used here, on ${lang} ${id}`).toBeUndefined();
		}
});

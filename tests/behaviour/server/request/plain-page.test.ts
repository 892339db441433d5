import { expect, it } from 'vitest';
import { noPage } from '$lib/i18n';
import { inOwnWords } from '$lib/server/request/plain-page';

const bare = (status: number, headers: Record<string, string> = {}) =>
	new Response('<html lang="en">Error</html>', {
		status,
		headers: { 'content-type': 'text/html', ...headers }
	});

it.each(['en', 'es'] as const)('an endpoint that refuses says so on a page in %s', async (lang) => {
	const answer = inOwnWords(bare(403), lang);
	expect(answer.status).toBe(403);
	const html = await answer.text();
	expect(html).toContain(`<html lang="${lang}">`);
	expect(html).toContain(`<h1>${noPage[lang].problem[403].title}</h1>`);
	expect(await inOwnWords(bare(418), lang).text()).toContain(noPage[lang].problem.other.title);
});

it('pages of ours, what is no page, what went well and faults are left as they are', () => {
	for (const answer of [
		bare(404, { 'x-sveltekit-page': 'true' }),
		bare(404, { 'content-type': 'application/json' }),
		bare(200),
		bare(500)
	])
		expect(inOwnWords(answer, 'es')).toBe(answer);
});

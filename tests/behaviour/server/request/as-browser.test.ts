import { describe, expect, it } from 'vitest';
import { asBrowser } from '$lib/server/request/as-browser';

const post = (accept?: string) =>
	new Request('http://localhost/en/sign-in', {
		method: 'POST',
		body: new URLSearchParams({ who: 'p1' }),
		headers: accept === undefined ? {} : { accept }
	});

describe('a posted form', () => {
	it('is answered with a page unless JSON was asked for by name', async () => {
		for (const accept of [undefined, '', '*/*', 'text/*', 'image/png']) {
			const request = asBrowser(post(accept));
			expect(request.headers.get('accept')).toBe('text/html');
			expect((await request.formData()).get('who')).toBe('p1');
		}
		for (const accept of ['application/json', 'text/html,application/xhtml+xml,*/*;q=0.8'])
			expect(asBrowser(post(accept)).headers.get('accept')).toBe(accept);
	});
});

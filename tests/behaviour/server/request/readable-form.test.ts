import { describe, expect, it } from 'vitest';
import { formFault } from '$lib/server/request/readable-form';

const url = (query = '') => new URL(`http://localhost/en/sign-in${query}`);
const post = (body: BodyInit, type?: string, query = '') =>
	formFault(
		new Request(url(query), { method: 'POST', body, headers: type ? { 'content-type': type } : {} }),
		url(query)
	);

describe('a posted form', () => {
	it('is passed on when it can be read, and can still be read then', async () => {
		const request = new Request(url(), { method: 'POST', body: new URLSearchParams({ who: 'p1' }) });
		expect(await formFault(request, url())).toBeNull();
		expect((await request.formData()).get('who')).toBe('p1');
		const files = new FormData();
		files.set('sheet', new Blob(['{}']), 'sheet.json');
		expect(await post(files)).toBeNull();
	});

	it('is stopped when it is cut off or not what it says', async () => {
		expect(
			await post(
				'--x\r\nContent-Disposition: form-data; name="a"\r\n\r\nb',
				'multipart/form-data; boundary=x'
			)
		).toBe(400);
		expect(await post('a=b', 'multipart/form-data')).toBe(400);
	});

	it('is stopped when it asks for an action no page can own', async () => {
		for (const name of ['constructor', 'toString', '__proto__', 'hasOwnProperty', 'default'])
			expect(await post('a=b', 'application/x-www-form-urlencoded', `?/${name}`), name).toBe(404);
		expect(await post('a=b', 'application/x-www-form-urlencoded', '?/hand-in&/constructor')).toBeNull();
	});

	it('leaves reading alone', async () => {
		expect(await formFault(new Request(url('?/constructor')), url('?/constructor'))).toBeNull();
	});
});

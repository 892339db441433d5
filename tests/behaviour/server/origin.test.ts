import { describe, expect, it } from 'vitest';
import { isFromOwnPage, isKnownHost } from '$lib/server/origin';
import { ownHosts } from '$lib/server/own-hosts.js';

describe('the host a request asks for', () => {
	const known = (url: string, configured: string[] | null = null) => isKnownHost(new URL(url), configured);

	it('is this PC by any of its names and addresses, on any port', () => {
		for (const host of ownHosts()) expect(known(`http://${host}:3000/en`), host).toBe(true);
		for (const host of ['LOCALHOST', 'localhost.', '127.0.0.1', '[::1]'])
			expect(known(`http://${host}/en`), host).toBe(true);
	});

	it('is nobody else', () => {
		for (const host of ['evil.example', 'localhost.evil.example', '203.0.113.9', 'xlocalhost'])
			expect(known(`http://${host}:3000/en`), host).toBe(false);
	});

	it('is what was configured, and then nothing but that', () => {
		expect(known('https://panel.shop.example/en', ['panel.shop.example'])).toBe(true);
		expect(known('http://localhost:3000/en', ['panel.shop.example'])).toBe(false);
	});
});

describe('where a form comes from', () => {
	const url = new URL('http://192.0.2.7:3000/en/sign-in');
	const own = (method: string, headers: Record<string, string>) =>
		isFromOwnPage(new Request(url, { method, headers }), url);

	it('does not matter for reading', () => {
		expect(own('GET', { origin: 'http://evil.example' })).toBe(true);
		expect(own('HEAD', {})).toBe(true);
	});

	it('is our own page when Origin says so, or Referer where there is no Origin', () => {
		for (const method of ['POST', 'PUT', 'PATCH', 'DELETE'])
			expect(own(method, { origin: 'http://192.0.2.7:3000' })).toBe(true);
		expect(own('POST', { referer: 'http://192.0.2.7:3000/en/sign-in?who=p1' })).toBe(true);
	});

	it('is refused from anywhere else and when unknown', () => {
		const foreign = [
			{ origin: 'http://evil.example' },
			{ origin: 'http://192.0.2.7' },
			{ origin: 'http://192.0.2.7:3001' },
			{ origin: 'https://192.0.2.7:3000' },
			{ origin: 'null' },
			{ origin: 'http://192.0.2.7:3000.evil.example' },
			{ origin: 'http://evil.example', referer: 'http://192.0.2.7:3000/en' },
			{ referer: 'http://evil.example/?http://192.0.2.7:3000/' },
			{}
		];
		for (const headers of foreign)
			expect(own('POST', headers as Record<string, string>), JSON.stringify(headers)).toBe(false);
	});
});

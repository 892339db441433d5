import { describe, expect, it } from 'vitest';
import { localPath } from '$lib/server/local-path';

const url = new URL('http://localhost:3000/en/sign-in');

describe('where to go after signing in', () => {
	it.each([
		['/en/crew?area=curing', '/en/crew?area=curing'],
		['/es', '/es'],
		['lessons', '/en/lessons']
	])('is a page of ours: %s', (wish, path) => {
		expect(localPath(wish, url, '/en')).toBe(path);
	});

	it.each([
		null,
		'',
		'//evil.example/en',
		'/\\evil.example/en',
		'http://evil.example/en',
		'javascript:alert(1)',
		'/en/../../evil',
		'/fr',
		'http://localhost:3001/en',
		'/\t/evil.example/en'
	])('is nowhere else: %s', (wish) => {
		expect(localPath(wish, url, '/en')).toBe('/en');
	});
});

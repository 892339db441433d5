import { describe, expect, it } from 'vitest';
import { sealSession, sessionCookieOptions, unsealSession } from '$lib/server/session-cookie';
import { createSessions } from '$lib/server/sessions';

const IDLE = 1000;

describe('a sign-in', () => {
	it('lasts while it is used and ends when it lies idle', () => {
		const sessions = createSessions(IDLE);
		const id = sessions.begin('p1', 0);
		expect(sessions.find(id, 999)).toBe('p1');
		expect(sessions.find(id, 1998)).toBe('p1');
		expect(sessions.find(id, 2998)).toBeNull();
		expect(sessions.find(id, 2998)).toBeNull();
	});

	it('gets a new id each time and ends the one before it at the same browser', () => {
		const sessions = createSessions(IDLE);
		const first = sessions.begin('p1', 0);
		const second = sessions.begin('p2', 1, first);
		expect(second).not.toBe(first);
		expect(sessions.find(first, 2)).toBeNull();
		expect(sessions.find(second, 2)).toBe('p2');
	});

	it('ends on its own or everywhere for a person', () => {
		const sessions = createSessions(IDLE);
		const [pc, tablet, other] = [sessions.begin('p1', 0), sessions.begin('p1', 0), sessions.begin('p2', 0)];
		sessions.end(pc);
		expect([sessions.find(pc, 1), sessions.find(tablet, 1)]).toEqual([null, 'p1']);
		sessions.endAllOf('p1');
		expect([sessions.find(tablet, 1), sessions.find(other, 1)]).toEqual([null, 'p2']);
	});

	it('is not found under an id nobody was given', () => {
		expect(createSessions(IDLE).find('toString', 0)).toBeNull();
	});
});

describe('the sign-in cookie', () => {
	const key = Buffer.alloc(32, 1);

	it('opens with the key it was sealed with', () => {
		expect(unsealSession(sealSession('abc', key), key)).toBe('abc');
	});

	it('does not open when anything in it was changed', () => {
		const value = sealSession('abc', key);
		const forged = [
			undefined,
			'',
			'abc',
			'abc.',
			'.',
			`x${value}`,
			`${value}x`,
			`${value}.x`,
			value.slice(0, -1)
		];
		for (const each of forged) expect(unsealSession(each, key)).toBeNull();
		expect(unsealSession(value, Buffer.alloc(32, 2))).toBeNull();
		expect(unsealSession(value.replace('abc', 'abd'), key)).toBeNull();
	});

	it('is kept from scripts and other sites, and marked Secure on https only', () => {
		expect(sessionCookieOptions(new URL('http://shop-pc:3000/en'))).toEqual({
			path: '/',
			httpOnly: true,
			sameSite: 'lax',
			secure: false
		});
		expect(sessionCookieOptions(new URL('https://panel.example/en')).secure).toBe(true);
	});
});

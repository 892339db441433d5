import { describe, expect, it } from 'vitest';
import { secretKindFor, secretProblem } from '$lib/server/secret-kind';

describe('which secret a person needs', () => {
	it('is a PIN only for somebody who trains and nothing else', () => {
		expect(secretKindFor(['trainee'])).toBe('pin');
		for (const roles of [['supervisor'], ['lead'], ['auditor'], ['trainee', 'supervisor']])
			expect(secretKindFor(roles)).toBe('passphrase');
	});
});

describe('a wished PIN', () => {
	it('is 4 to 8 digits', () => {
		for (const pin of ['2580', '90210734']) expect(secretProblem('pin', pin)).toBeNull();
		for (const pin of ['', '258', '902107345', '25 80', '25a0', '٢٥٨٠', '2580\n'])
			expect(secretProblem('pin', pin)).toBe('pin-format');
	});

	it('is not one digit repeated and not a run', () => {
		for (const pin of ['0000', '1234', '876543', '77777777'])
			expect(secretProblem('pin', pin)).toBe('pin-plain');
		for (const pin of ['1243', '0001', '8901']) expect(secretProblem('pin', pin)).toBeNull();
	});
});

describe('a wished passphrase', () => {
	it('has 12 to 200 characters, counted as people see them', () => {
		expect(secretProblem('passphrase', 'rack and rod')).toBeNull();
		expect(secretProblem('passphrase', 'rack and ro')).toBe('passphrase-short');
		expect(secretProblem('passphrase', '🔩🔧🪛🧤🥽🧪')).toBe('passphrase-short');
		expect(secretProblem('passphrase', 'rack '.repeat(41))).toBe('too-long');
	});

	it('has at least five different characters', () => {
		expect(secretProblem('passphrase', 'abababababababab')).toBe('passphrase-plain');
	});
});

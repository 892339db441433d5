/** PIN: for those who only train. Passphrase: for everyone who signs or opens the record. */
export type SecretKind = 'pin' | 'passphrase';

/** Why a wished secret is not taken. */
export type SecretProblem = 'pin-format' | 'pin-plain' | 'passphrase-short' | 'passphrase-plain' | 'too-long';

const PASSPHRASE_LEAST = 12;
const LONGEST = 200;
const DISTINCT_LEAST = 5;

/** @param roles the roles a person holds, at least one */
export const secretKindFor = (roles: readonly string[]): SecretKind =>
	roles.every((role) => role === 'trainee') ? 'pin' : 'passphrase';

const isRun = (digits: string): boolean =>
	[-1, 0, 1].some((step) =>
		[...digits].every((digit, i) => i === 0 || Number(digit) - Number(digits[i - 1]) === step)
	);

/**
 * What is wrong with a wished secret, or null. A PIN is 4–8 digits, not one digit repeated nor a run such as 1234;
 * a passphrase is 12–200 characters with at least five different ones.
 */
export const secretProblem = (kind: SecretKind, secret: string): SecretProblem | null => {
	const characters = [...secret];
	if (characters.length > LONGEST) return 'too-long';
	if (kind === 'pin') {
		if (!/^[0-9]{4,8}$/.test(secret)) return 'pin-format';
		return isRun(secret) ? 'pin-plain' : null;
	}
	if (characters.length < PASSPHRASE_LEAST) return 'passphrase-short';
	return new Set(characters).size < DISTINCT_LEAST ? 'passphrase-plain' : null;
};

import { setup, shop, shopPeople, type Lang } from '$lib/i18n';
import { secretKindFor, secretProblem } from '../../secret-kind';

/** A secret typed twice. */
export interface NewSecret {
	readonly secret: string;
	readonly again: string;
}

/** What is wrong with a secret somebody with these roles is to get, by field, in words. */
export const newSecretProblems = (
	{ secret, again }: NewSecret,
	roles: readonly string[],
	lang: Lang
): Record<string, string> => {
	if (!secret) return { secret: shop[lang].empty };
	const problem = secretProblem(secretKindFor(roles), secret);
	if (problem) return { secret: setup[lang].problem[problem] };
	return again === secret ? {} : { again: shopPeople[lang].notAlike };
};

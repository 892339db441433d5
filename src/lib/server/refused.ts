import { fail, type ActionFailure } from '@sveltejs/kit';
import type { Refusal, RefusalCode, Refused } from '$lib/records';

const statusOf = (code: RefusalCode): number => {
	if (code === 'malformed') return 400;
	if (code === 'not-allowed' || code === 'own-record' || code === 'other-persons-run') return 403;
	return code.startsWith('unknown-') ? 404 : 409;
};

/** The answer of a form action whose act the record refused. The screen words the refusal. */
export const refused = ({ refusal }: Refused): ActionFailure<{ refusal: Refusal }> =>
	fail(statusOf(refusal.code), { refusal });

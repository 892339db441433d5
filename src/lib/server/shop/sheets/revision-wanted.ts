/** The revision an address asks for by `?revision=`; null where it asks for none, not ok where that is no number. */
export const revisionWanted = ({
	searchParams
}: URL): { ok: true; revision: number | null } | { ok: false } => {
	const asked = searchParams.get('revision');
	if (asked === null) return { ok: true, revision: null };
	return /^[1-9]\d{0,8}$/.test(asked) ? { ok: true, revision: Number(asked) } : { ok: false };
};

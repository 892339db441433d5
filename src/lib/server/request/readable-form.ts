const FORM_TYPES = new Set(['application/x-www-form-urlencoded', 'multipart/form-data', 'text/plain']);

const isForm = (request: Request): boolean =>
	FORM_TYPES.has((request.headers.get('content-type') ?? '').split(';')[0]?.trim().toLowerCase() ?? '');

/** The name of the form action in the query, or null for the page's only one. */
const actionName = (url: URL): string | null =>
	[...url.searchParams.keys()].find((key) => key.startsWith('/'))?.slice(1) ?? null;

/**
 * Kit looks an action up by the name in the query without asking whether the page owns it, so that `?/constructor`
 * finds a function of every object, and it takes `?/default` for a fault of ours.
 */
const isPossibleAction = (name: string | null): boolean =>
	name === null || (name !== 'default' && !(name in Object.prototype));

const hasStatus413 = (error: unknown): boolean =>
	error instanceof Error && (('status' in error && error.status === 413) || hasStatus413(error.cause));

/**
 * Whether a posted form can be read at all, before any action sees it.
 * @returns null when it can, else the status to answer with
 */
export const formFault = async (request: Request, url: URL): Promise<400 | 404 | 413 | null> => {
	if (request.method !== 'POST') return null;
	if (!isPossibleAction(actionName(url))) return 404;
	if (!isForm(request)) return null;
	try {
		await request.clone().formData();
		return null;
	} catch (error) {
		return hasStatus413(error) ? 413 : 400;
	}
};

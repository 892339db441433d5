/**
 * Headers every answer carries. `same-origin` and not stricter, because a browser told to send no referrer sends no
 * usable Origin with a form either. `no-store`, because the next person at the shared PC has a Back button.
 */
const HEADERS: Readonly<Record<string, string>> = {
	'x-content-type-options': 'nosniff',
	'x-frame-options': 'DENY',
	'referrer-policy': 'same-origin',
	'cross-origin-resource-policy': 'same-origin',
	'permissions-policy': 'camera=(), microphone=(), geolocation=()',
	'cache-control': 'no-store'
};

/** Adds the headers, leaving those the answer already has. */
export const secure = (response: Response): Response => {
	for (const [name, value] of Object.entries(HEADERS))
		if (!response.headers.has(name)) response.headers.set(name, value);
	return response;
};

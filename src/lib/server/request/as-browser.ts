/**
 * Kit answers a posted form with JSON and status 200, refusals too, to whoever takes "anything", as scripts and
 * command-line tools do. Only our own pages ask for that JSON by name; everybody else gets the page and its status.
 */
export const asBrowser = (request: Request): Request => {
	const accepts = request.headers.get('accept') ?? '';
	if (request.method !== 'POST' || /application\/json|text\/html/.test(accepts)) return request;
	const headers = new Headers(request.headers);
	headers.set('accept', 'text/html');
	return new Request(request, { headers });
};

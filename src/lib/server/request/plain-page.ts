import { noPage, requests, type Lang } from '$lib/i18n';

const escaped = (text: string): string => text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);

type Words = { readonly title: string; readonly help: string };

const page = (status: number, { title, help }: Words, lang: Lang): Response => {
	const html = `<!doctype html>
<html lang="${lang}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${escaped(title)}</title>
<style>body{max-width:40rem;margin:3rem auto;padding:0 1rem;font:1.125rem/1.5 sans-serif}</style>
</head>
<body>
<main>
<h1>${escaped(title)}</h1>
<p>${escaped(help)}</p>
<p><a href="/${lang}">${escaped(requests[lang].toStart)}</a></p>
</main>
</body>
</html>
`;
	return new Response(html, {
		status,
		headers: {
			'content-type': 'text/html; charset=utf-8',
			'content-security-policy':
				"default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'"
		}
	});
};

/** A page of its own for a request that does not reach a screen. Needs no script, style sheet or font. */
export const plainPage = (status: keyof (typeof requests)['en']['status'], lang: Lang): Response =>
	page(status, requests[lang].status[status], lang);

const isBare = ({ status, headers }: Response): boolean =>
	status >= 400 &&
	status < 500 &&
	headers.get('content-type')?.startsWith('text/html') === true &&
	!headers.has('x-sveltekit-page');

/**
 * Kit answers for an endpoint that refuses with a bare English page. In its place stands ours, in the reader's words;
 * any other answer is left as it is. A fault of ours keeps kit's page, which has the number to ask about.
 */
export const inOwnWords = (answer: Response, lang: Lang): Response => {
	if (!isBare(answer)) return answer;
	const words: Readonly<Record<number, Words>> = noPage[lang].problem;
	return page(answer.status, words[answer.status] ?? noPage[lang].problem.other, lang);
};

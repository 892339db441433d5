import { requests, type Lang } from '$lib/i18n';

const escaped = (text: string): string => text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** A page of its own for a request that does not reach a screen. Needs no script, style sheet or font. */
export const plainPage = (status: keyof (typeof requests)['en']['status'], lang: Lang): Response => {
	const { title, help } = requests[lang].status[status];
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

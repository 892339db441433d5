import { LANGS, isLang, type Lang } from '$lib/i18n';

/** The language of a request: the one in its path, else the browser's first wish among ours, else English. */
export const preferredLang = (path: string, accepts: string | null): Lang => {
	const inPath = path.split('/')[1] ?? '';
	if (isLang(inPath)) return inPath;
	const wishes = (accepts ?? '').split(',').map((wish) => {
		const [range = '', ...parameters] = wish.trim().toLowerCase().split(';');
		const quality = parameters.map((p) => /^\s*q=([\d.]+)$/.exec(p)?.[1]).find(Boolean);
		return { lang: range.split('-')[0] ?? '', quality: quality === undefined ? 1 : Number(quality) };
	});
	const best = wishes
		.filter((wish) => wish.quality > 0 && isLang(wish.lang))
		.sort((a, b) => b.quality - a.quality)[0];
	return LANGS.find((lang) => lang === best?.lang) ?? 'en';
};

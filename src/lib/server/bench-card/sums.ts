import type { Expectation } from '$lib/engine';
import { benchCard, type Lang } from '$lib/i18n';
import { derivationsOf, type Reader } from '$lib/paper';

type Derivation = ReturnType<typeof derivationsOf>[number];

/** One sum of a derivation as a printed line has room for it: its result, then formula and what went in. */
export type Sum = { readonly value: string; readonly text: string };

/** Origins at which there is nothing to have read. */
const NO_FACT = ['arithmetic', 'example', 'customer'];

/** Where a number comes from in one word, with a star where nobody has checked it against a text. */
function markOf({ provenance, from }: Derivation, lang: Lang): string {
	if (from?.length || provenance.origin === 'arithmetic') return '';
	const unread = provenance.verification === 'memory' && !NO_FACT.includes(provenance.origin);
	return `[${benchCard[lang].mark[provenance.origin]}${unread ? '*' : ''}]`;
}

const textOf = (one: Derivation, lang: Lang, value = one.value): string =>
	[one.label, value, markOf(one, lang)].filter(Boolean).join(' ');

const sumOf = ({ label, value, formula, from = [] }: Derivation, lang: Lang): Sum => ({
	value,
	text: `${[label, formula].filter(Boolean).join(': ')} (${from.map((one) => textOf(one, lang)).join(', ')})`
});

/** Numbers that were stated and not worked out: by their marks alone where the line shows them as its window. */
function statedIn(tops: readonly Derivation[], lang: Lang): string {
	const stated = tops.filter(({ from }) => !from?.length);
	const texts = stated.map((one) => (stated.length === tops.length ? markOf(one, lang) : textOf(one, lang)));
	return [...new Set(texts)].filter(Boolean).join('; ');
}

/**
 * The derivation of what a rule expects, in short: what was stated, and the sums one after the other.
 * @param told sums that stand on the card already; those of this expectation are added
 */
export function shortDerivation(expectation: Expectation, told: Set<string>, reader: Reader) {
	const { lang } = reader;
	const tops = derivationsOf(expectation, reader);
	const sums: Sum[] = [];
	const walk = (one: Derivation): void => {
		const key = `${one.label} ${one.value}`;
		if (!one.from?.length || told.has(key)) return;
		told.add(key);
		sums.push(sumOf(one, lang));
		one.from.forEach(walk);
	};
	tops.forEach(walk);
	return { stated: statedIn(tops, lang), sums };
}

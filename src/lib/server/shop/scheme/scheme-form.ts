import { parseQuantity, problemText } from '$lib/engine';
import { say, shopScheme, type Lang } from '$lib/i18n';
import { readScheme, type Scheme, type SchemeLimit, type SchemeProblem } from '$lib/learning';
import { limitText } from './limit-text';
import { LIMITS, SCHEME_GROUPS } from './limits-of';

export const SCHEME_FIELDS = LIMITS.map(({ at }) => at);

const parse = (typed: string, unit: SchemeLimit['unit'], lang: Lang) =>
	unit === 'share'
		? parseQuantity(typed, 'fraction', { lang, fallbackUnit: '%' })
		: parseQuantity(typed, 'count', { lang });

/** What is wrong with a number, or with numbers of a group that do not go together. */
const inWords = ({ at, problem }: SchemeProblem, lang: Lang): string => {
	const words = shopScheme[lang];
	const placed = LIMITS.find((each) => each.at === at);
	if (placed) {
		const { min, max, step, unit } = placed.limit;
		const text = (number: number) => limitText(number, unit, lang);
		return problem === 'off-step' ? words.offStep(text(step)) : words.between(text(min), text(max));
	}
	return problem in words.problem
		? words.problem[problem as keyof typeof words.problem]
		: words.problem['not-this-form'];
};

/** Reads the numbers of a scheme as typed: shares in percent, all others as whole numbers. */
export const schemeFromForm = (
	typed: Readonly<Record<string, string>>,
	lang: Lang
): { ok: true; scheme: Scheme } | { ok: false; problems: Record<string, string> } => {
	const groups: Record<string, Record<string, number>> = Object.fromEntries(
		SCHEME_GROUPS.map((group) => [group, {}])
	);
	const problems: Record<string, string> = {};
	for (const { group, key, at, limit } of LIMITS) {
		const parsed = parse(typed[at] ?? '', limit.unit, lang);
		if (parsed.ok) groups[group]![key] = parsed.value;
		else problems[at] = say(problemText(parsed.problem), lang);
	}
	const read = readScheme(groups);
	if (read.ok) return { ok: true, scheme: read.scheme };
	// what could not be read is missing from the groups, and was worded already
	for (const problem of read.problems)
		if (!(problem.at in problems)) problems[problem.at] ??= inWords(problem, lang);
	return { ok: false, problems };
};

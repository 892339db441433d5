import { say, shopScheme, type Lang } from '$lib/i18n';
import type { Scheme } from '$lib/learning';
import { schemeAt, type SchemeVersion } from '$lib/records';
import type { App } from '../../app';
import { nameOf } from '../../shown-text';
import { limitEntry, limitText } from './limit-text';
import { LIMITS, numberOf, SCHEME_GROUPS } from './limits-of';

// was checked when it was entered
const limitsOf = ({ content }: SchemeVersion): Scheme => content as unknown as Scheme;

/** What a version changed in the one before it. */
const changesOf = (version: SchemeVersion, before: SchemeVersion | undefined, lang: Lang) =>
	before === undefined
		? []
		: LIMITS.filter(
				(placed) => numberOf(limitsOf(version), placed) !== numberOf(limitsOf(before), placed)
			).map((placed) => ({
				label: say(placed.limit.label, lang),
				was: limitText(numberOf(limitsOf(before), placed), placed.limit.unit, lang),
				is: limitText(numberOf(limitsOf(version), placed), placed.limit.unit, lang)
			}));

const field = (newest: Scheme, inForce: Scheme, lang: Lang) => (placed: (typeof LIMITS)[number]) => {
	const { at, limit } = placed;
	const { unit, min, max, value } = limit;
	const text = (number: number) => limitText(number, unit, lang);
	return {
		id: at,
		name: at,
		label: say(limit.label, lang),
		because: say(limit.because, lang),
		holds: text(numberOf(inForce, placed)),
		delivered: text(value),
		hint: shopScheme[lang].between(text(min), text(max)),
		value: limitEntry(numberOf(newest, placed), unit)
	};
};

/**
 * The scheme as it holds now, filled into the form as the newest version has it, and every version with what it
 * changed. There is a scheme since the shop was founded.
 */
export const schemeView = (app: App, lang: Lang) => {
	const { state } = app.journal;
	const { schemes } = state.shop;
	const inForce = schemeAt(state, app.now().toISOString());
	const newest = schemes.at(-1);
	const shown = field(newest ? limitsOf(newest) : inForce.limits, inForce.limits, lang);
	return {
		inForce: inForce.ref.version,
		newest: newest?.version ?? inForce.ref.version,
		groups: SCHEME_GROUPS.map((group) => ({
			group,
			name: shopScheme[lang].group[group],
			limits: LIMITS.filter((placed) => placed.group === group).map(shown)
		})),
		versions: schemes
			.map((version, index) => ({
				version: version.version,
				effective: version.effective,
				at: version.at,
				by: nameOf(app, version.by, lang),
				changes: changesOf(version, schemes[index - 1], lang)
			}))
			.toReversed()
	};
};

import type { Scheme } from '$lib/learning';
import type { SchemeVersion } from '../folds/shop';
import { inForce } from '../in-force';
import type { State } from '../state';
import { dayOf } from './calendar-day';

export interface SchemeInForce {
	/** As stored beside every decision taken under it. */
	readonly ref: { readonly scheme: string; readonly version: number; readonly hash: string };
	/** Was checked when it was entered (see the command that sets it). */
	readonly limits: Scheme;
}

const named = ({ scheme, version, contentHash, content }: SchemeVersion): SchemeInForce => ({
	ref: { scheme, version, hash: contentHash },
	limits: content as unknown as Scheme
});

/**
 * The scheme in force at a moment. Before the first (a clock set back behind the founding) it is the first.
 * @throws while there is no shop: nobody can be asking then
 */
export function schemeAt(state: State, instant: string): SchemeInForce {
	const version = inForce(state.shop, dayOf(state, instant)).scheme ?? state.shop.schemes[0];
	if (!version) throw new Error('there is no scheme before the shop is founded');
	return named(version);
}

/**
 * The scheme a decision was taken under, whatever has come since.
 * @throws if the record has no such version: it was then never in force
 */
export function schemeNamed(state: State, ref: SchemeInForce['ref']): SchemeInForce {
	const version = state.shop.schemes.find(
		(each) => each.version === ref.version && each.contentHash === ref.hash
	);
	if (!version) throw new Error(`scheme version ${ref.version} is not in the record`);
	return named(version);
}

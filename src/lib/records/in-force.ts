import { contentHash } from './content-hash';
import type { SchemeVersion, SheetRevision, ShopState } from './folds/shop';
import type { Json } from './json';

/** The last decision whose day has come. Of two from one day, the one entered later. */
function latest<T>(decisions: readonly T[], day: string, from: (decision: T) => string): T | undefined {
	let found: T | undefined;
	for (const decision of decisions)
		if (from(decision) <= day && (!found || from(decision) >= from(found))) found = decision;
	return found;
}

export interface InForce {
	readonly sheets: readonly SheetRevision[];
	readonly values: Readonly<Record<string, Json>>;
	/** Names the set of values by content; stored with every drill. */
	readonly valuesHash: string;
	readonly scheme: SchemeVersion | undefined;
}

/** Data sheets, shop values and scheme as they stand on a day in the shop (YYYY-MM-DD). */
export function inForce(shop: ShopState, day: string): InForce {
	const sheets = [...shop.sheets.values()]
		.map((revisions) => latest(revisions, day, (revision) => revision.effective))
		.filter((revision) => revision !== undefined);
	const values: Record<string, Json> = {};
	for (const [id, decisions] of shop.values) {
		const decision = latest(decisions, day, (each) => each.from);
		if (decision) values[id] = decision.amount;
	}
	return {
		sheets,
		values,
		valuesHash: contentHash(values),
		scheme: latest(shop.schemes, day, (version) => version.effective)
	};
}

import { LARGEST_SEED, makeProvingDrill } from '$lib/drills';
import type { CompetencyId } from '$lib/learning';
import type { App } from '../app';
import { shopInForce } from '../shop-in-force';

/** Of some rules, those no ticket of this shop can ask for: a refresher on them could never be proven. */
export function ticketlessRules(app: App, competency: CompetencyId, rules: readonly string[]): string[] {
	const { shop } = shopInForce(app);
	const none = (rule: string) =>
		makeProvingDrill({ seed: app.seed() & LARGEST_SEED, competency, shop, rules: [rule] }) === undefined;
	return rules.filter(none);
}

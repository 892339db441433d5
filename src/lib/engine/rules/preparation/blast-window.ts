import { shopValue, shopWindow, type Shop } from '../../shop/shop';
import type { Situation } from '../../plan/situation';
import { bar } from '../../units/construct';
import { blastings } from './blasting';

type PressureId = NonNullable<ReturnType<typeof blastings>>[number]['pressure'];
type MostId = Extract<PressureId, `blast.pressure-most.${string}`>;

const isMost = (id: PressureId): id is MostId => id.startsWith('blast.pressure-most.');
const amber = bar(0.3);

const limitOf = (shop: Shop, id: PressureId) =>
	isMost(id)
		? { kind: 'at-most' as const, max: shopValue(shop, id), amber }
		: { kind: 'range' as const, ...shopWindow(shop, id), amber };

/** Blast pressures of the most delicate part. Only for a job that is blasted. */
export function blastWindow(seen: Situation) {
	const limits = blastings(seen)!.map(({ pressure }) => limitOf(seen.shop, pressure));
	return limits.reduce((softest, one) => (softest.max.value <= one.max.value ? softest : one));
}

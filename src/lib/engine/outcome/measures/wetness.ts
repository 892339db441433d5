import { sheetWindow, type Situation } from '../../plan/situation';
import type { FieldId } from '../../setup/fields';
import { shopWindow } from '../../shop/shop';
import type { Broken } from '../broken';
import type { OutcomeMeasure, Side } from '../outcome';
import { allSet, type PutIn } from '../put-in';
import { signedIndex } from '../signed-index';

/** Too much of these dries the drops on their way, too little leaves them wet. */
const DRYING: readonly FieldId[] = ['gun-distance', 'cap-pressure', 'gun-speed', 'cup-time'];
const WETTING: readonly FieldId[] = ['thinner-share', 'wet-film'];

const airSide = (seen: Situation): Side => {
	const { max } = sheetWindow(seen, 'air-temperature') ?? shopWindow(seen.shop, 'spray.air');
	return seen.job.weather.air > max.value ? 'low' : 'high';
};

/** How wet the drops lie on the part: sprayed dry, as wanted, or flooded. */
export function wetness(given: PutIn, broken: readonly Broken[]): OutcomeMeasure | undefined {
	if (!allSet(given, [...DRYING, ...WETTING])) return undefined;
	const pull = ({ field, rule, off }: Broken): Side | undefined => {
		if (rule.id === 'air-in-window') return airSide(given.seen);
		if (off === 'wrong') return undefined;
		if (WETTING.includes(field)) return off;
		return DRYING.includes(field) ? (off === 'high' ? 'low' : 'high') : undefined;
	};
	return { id: 'wetness', kind: 'index', ...signedIndex(broken, pull) };
}

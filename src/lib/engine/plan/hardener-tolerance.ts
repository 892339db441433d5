import { shopValue } from '../shop/shop';
import { sheetValue, sheetWindow, type Situation } from './situation';
import { workedOut, type Traced } from './trace';

const LABEL = {
	en: 'Ratio band of the sheet, as hardener error',
	es: 'Banda de relación de la hoja, como error de endurecedor'
};

/** How far off the hardener may be: the shop's value, or the band the data sheet permits where that is tighter. */
export function hardenerTolerance(rule: string, seen: Situation): Traced<'fraction'> {
	const shop = shopValue(seen.shop, 'mix.hardener-tolerance');
	const [ratio, band] = [sheetValue(seen, 'mix-ratio'), sheetWindow(seen, 'mix-ratio-band')];
	if (!ratio || !band) return shop;
	const short = 1 - ratio.value / band.max.value;
	const long = ratio.value / band.min.value - 1;
	const permitted = workedOut(rule, 'fraction', Math.min(short, long), LABEL, {
		ratio,
		lowest: band.min,
		highest: band.max
	});
	return permitted.value < shop.value ? permitted : shop;
}

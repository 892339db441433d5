import { shopValue, type Shop } from '../shop/shop';
import { workedOut, type Traced } from './trace';

/** The most to mix where so much is needed: the shop's reserve on top. */
export function withReserve(needed: Traced<'volume'>, shop: Shop): Traced<'volume'> {
	const reserve = shopValue(shop, 'mix.batch-reserve');
	const label = { en: 'Coating to mix, with reserve', es: 'Recubrimiento por mezclar, con reserva' };
	return workedOut('batch-covers-the-job', 'volume', needed.value * (1 + reserve.value), label, {
		needed,
		reserve
	});
}

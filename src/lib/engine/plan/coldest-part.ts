import { dewPoint } from '../physics/humidity/dew-point';
import { shopValue, type Shop } from '../shop/shop';
import { remembered } from './remembered';
import type { Situation } from './situation';
import { fromJob, workedOut, type Traced } from './trace';

/** The coldest a part may be in this air: its dew point and the shop's margin. */
export function coldestIn(
	air: Traced<'temperature'>,
	humidity: Traced<'fraction'>,
	shop: Shop
): Traced<'temperature'> {
	const dew = dewPoint.of({ air, humidity });
	const margin = shopValue(shop, 'spray.dew-point-margin');
	const label = { en: 'Dew point and margin', es: 'Punto de rocío y margen' };
	return workedOut('lowest-surface-temperature', 'temperature', dew.value + margin.value, label, {
		dew,
		margin
	});
}

/** The coldest a part may be in today's air. */
export const coldestPart = remembered(({ job, shop }: Situation): Traced<'temperature'> => {
	const air = fromJob('weather.air', 'temperature', job.weather.air, { en: 'Air', es: 'Aire' });
	const humidity = fromJob('weather.humidity', 'fraction', job.weather.humidity, {
		en: 'Relative humidity',
		es: 'Humedad relativa'
	});
	return coldestIn(air, humidity, shop);
});

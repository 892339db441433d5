import { dewPoint } from '../physics/dew-point';
import { shopValue } from '../shop/shop';
import type { Situation } from './situation';
import { fromJob, workedOut, type Traced } from './trace';

/** The coldest a part may be in today's air: its dew point and the shop's margin. */
export function coldestPart({ job, shop }: Situation): Traced<'temperature'> {
	const air = fromJob('weather.air', 'temperature', job.weather.air, { en: 'Air', es: 'Aire' });
	const humidity = fromJob('weather.humidity', 'fraction', job.weather.humidity, {
		en: 'Relative humidity',
		es: 'Humedad relativa'
	});
	const dew = dewPoint.of({ air, humidity });
	const margin = shopValue(shop, 'spray.dew-point-margin');
	const label = { en: 'Dew point and margin', es: 'Punto de rocío y margen' };
	return workedOut('lowest-surface-temperature', 'temperature', dew.value + margin.value, label, {
		dew,
		margin
	});
}

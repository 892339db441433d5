import { STATION_NAMES } from '$lib/engine';
import { say, shopValues } from '$lib/i18n';
import type { Reader } from '$lib/paper';
import type { App } from '../../app';
import { shopInForce } from '../../shop-in-force';
import { gearView } from './gear-view';
import { isGear, VALUE_ROOMS, valuesOf } from './value-rooms';
import { valueView } from './value-view';

/** Every number the shop may set, by station, as it holds today; the gear of the hazard assessment by task. */
export const valueList = (app: App, reader: Reader) => {
	const { shop } = shopInForce(app);
	return {
		rooms: VALUE_ROOMS.map((room) => ({
			room,
			name: room === 'practical' ? shopValues[reader.lang].practical : say(STATION_NAMES[room], reader.lang),
			values: valuesOf(room)
				.filter((id) => !isGear(id))
				.map((id) => valueView(app, id, reader, shop))
		})).filter(({ values }) => values.length > 0),
		gear: gearView(app, reader, shop)
	};
};

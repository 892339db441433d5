import { celsius, coldestIn, given, percent, shopWindow, workedOut } from '$lib/engine';
import type { LessonSum } from '$lib/lessons';

const air = (degrees: number) => given('temperature', celsius(degrees), { en: 'Air, T', es: 'Aire, T' });
const humidity = (share: number) =>
	given('fraction', percent(share), { en: 'Relative humidity, RH', es: 'Humedad relativa, RH' });

export default [
	{
		id: 'by-humidity',
		asks: {
			en: 'A list for the wall: the same air, drier and damper. What is its dew point, and how cold may a part be?',
			es: 'Una lista para la pared: el mismo aire, más seco y más húmedo. ¿Cuál es su punto de rocío y qué tan fría puede estar una pieza?'
		},
		work(shop) {
			const same = air(22);
			return [40, 50, 60, 70, 80, 90].map((share) => coldestIn(same, humidity(share), shop));
		}
	},
	{
		id: 'dew-point-this-morning',
		asks: {
			en: 'Readings at the rack this morning, and again after the heater ran. How cold may the coldest part be?',
			es: 'Lecturas junto al bastidor esta mañana y otra vez después de prender el calefactor. ¿Qué tan fría puede estar la pieza más fría?'
		},
		work(shop) {
			const damp = humidity(60);
			return [coldestIn(air(22), damp, shop), coldestIn(air(25), damp, shop)];
		}
	},
	{
		id: 'part-window',
		asks: {
			en: 'A damp afternoon. The part has to be dry and also inside the shop’s part window. From which temperature is it both, and how many degrees are left above that?',
			es: 'Una tarde húmeda. La pieza debe estar seca y además dentro de la ventana de pieza del taller. ¿Desde qué temperatura cumple las dos cosas y cuántos grados quedan por encima?'
		},
		work(shop) {
			const dry = coldestIn(air(25), humidity(70), shop);
			const { min, max } = shopWindow(shop, 'spray.part');
			const lowest = {
				...min,
				label: { en: 'Shop’s lowest part temperature', es: 'Temperatura mínima de pieza del taller' }
			};
			const highest = {
				...max,
				label: { en: 'Shop’s highest part temperature', es: 'Temperatura máxima de pieza del taller' }
			};
			const from = workedOut(
				'part-near-shop-temperature',
				'temperature',
				Math.max(dry.value, lowest.value),
				{ en: 'The higher of the two', es: 'La más alta de las dos' },
				{ dry, lowest }
			);
			const room = workedOut(
				'part-near-shop-temperature',
				'temperature-difference',
				highest.value - from.value,
				{ en: 'Room left up to the highest', es: 'Grados que quedan hasta la máxima' },
				{ highest, from }
			);
			return [from, room];
		}
	}
] as const satisfies readonly LessonSum[];

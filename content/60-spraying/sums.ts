import {
	celsius,
	coldestIn,
	filmPerPass,
	given,
	metresPerSecond,
	micrometres,
	millilitresPerMinute,
	millimetres,
	percent,
	shopValue,
	wetFilm
} from '$lib/engine';
import type { LessonSum } from '$lib/lessons';

const air = (degrees: number) => given('temperature', celsius(degrees), { en: 'Air, T', es: 'Aire, T' });
const humidity = given('fraction', percent(60), {
	en: 'Relative humidity, RH',
	es: 'Humedad relativa, RH'
});
const solids = given('fraction', percent(30), {
	en: 'Volume solids on the sheet, VS',
	es: 'Sólidos en volumen según la hoja, VS'
});

export default [
	{
		id: 'dew-point-this-morning',
		asks: {
			en: 'Readings at the rack this morning, and again after the heater ran. How cold may the coldest part be?',
			es: 'Lecturas junto al bastidor esta mañana y otra vez después de prender el calefactor. ¿Qué tan fría puede estar la pieza más fría?'
		},
		work: (shop) => [coldestIn(air(22), humidity, shop), coldestIn(air(25), humidity, shop)]
	},
	{
		id: 'wet-for-dry',
		asks: {
			en: 'The ticket asks for a dry film. How much must lie wet, straight from the can and with thinner?',
			es: 'La orden pide una película seca. ¿Cuánto debe quedar húmedo, tal como viene en la lata y con diluyente?'
		},
		work() {
			const dry = given('length', micrometres(25), {
				en: 'Dry film wanted, DFT',
				es: 'Película seca pedida, DFT'
			});
			const thinned = (share: number) =>
				given('fraction', percent(share), {
					en: 'Thinner per volume of coating, x',
					es: 'Diluyente por volumen de recubrimiento, x'
				});
			return [
				wetFilm.of({ dry, solids, thinner: thinned(0) }),
				wetFilm.of({ dry, solids, thinner: thinned(10) })
			];
		}
	},
	{
		id: 'one-pass',
		asks: {
			en: 'A tired arm slows down. What does one pass leave at the speed of the morning, and what at that of the afternoon?',
			es: 'El brazo cansado va más lento. ¿Cuánto deja una pasada a la velocidad de la mañana y cuánto a la de la tarde?'
		},
		work(shop) {
			const flow = given('flow', millilitresPerMinute(60), {
				en: 'Paint through the tip, Q',
				es: 'Pintura que sale por la boquilla, Q'
			});
			const index = given('length', millimetres(50), {
				en: 'From one stroke to the next',
				es: 'De una pasada a la siguiente'
			});
			const transfer = shopValue(shop, 'spray.transfer');
			const at = (speed: number, en: string, es: string) =>
				filmPerPass.of({
					...{ flow, solids, transfer, index },
					speed: given('speed', metresPerSecond(speed), { en, es })
				});
			return [
				at(0.35, 'Gun speed in the morning, v', 'Velocidad de la mañana, v'),
				at(0.25, 'Gun speed in the afternoon, v', 'Velocidad de la tarde, v')
			];
		}
	}
] as const satisfies readonly LessonSum[];

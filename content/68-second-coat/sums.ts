import { given, micrometres, percent, wetFilm } from '$lib/engine';
import type { LessonSum } from '$lib/lessons';

export default [
	{
		id: 'one-or-two',
		asks: {
			en: 'The same dry film, laid in two coats or in one. How much lies wet at a time?',
			es: 'La misma película seca, en dos manos o en una. ¿Cuánto queda húmedo cada vez?'
		},
		work() {
			const solids = given('fraction', percent(25), {
				en: 'Volume solids on the sheet, VS',
				es: 'Sólidos en volumen según la hoja, VS'
			});
			const thinner = given('fraction', percent(5), {
				en: 'Thinner per volume of coating, x',
				es: 'Diluyente por volumen de recubrimiento, x'
			});
			const laid = (dry: number, en: string, es: string) =>
				wetFilm.of({ dry: given('length', micrometres(dry), { en, es }), solids, thinner });
			return [
				laid(10, 'Dry film of each of two coats, DFT', 'Película seca de cada una de dos manos, DFT'),
				laid(20, 'Dry film in one coat, DFT', 'Película seca en una mano, DFT')
			];
		}
	}
] as const satisfies readonly LessonSum[];

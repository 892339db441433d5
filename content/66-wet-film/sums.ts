import { dryFilm, given, micrometres, percent, wetFilm } from '$lib/engine';
import type { LessonSum } from '$lib/lessons';

const solids = given('fraction', percent(30), {
	en: 'Volume solids on the sheet, VS',
	es: 'Sólidos en volumen según la hoja, VS'
});
const thinned = (share: number) =>
	given('fraction', percent(share), {
		en: 'Thinner per volume of coating, x',
		es: 'Diluyente por volumen de recubrimiento, x'
	});

export default [
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
			return [
				wetFilm.of({ dry, solids, thinner: thinned(0) }),
				wetFilm.of({ dry, solids, thinner: thinned(10) })
			];
		}
	},
	{
		id: 'after-the-comb',
		asks: {
			en: 'The comb on the witness panel was read right after a coat of thinned paint. What will this coat be after the oven?',
			es: 'El peine se leyó en el panel testigo justo después de una mano con pintura diluida. ¿Cuánto será esa mano después del horno?'
		},
		work() {
			const wet = given('length', micrometres(45), {
				en: 'Read on the comb, WFT',
				es: 'Leído en el peine, WFT'
			});
			return dryFilm.of({ wet, solids, thinner: thinned(10) });
		}
	}
] as const satisfies readonly LessonSum[];

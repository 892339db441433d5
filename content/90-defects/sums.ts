import { dryFilm, given, micrometres, percent } from '$lib/engine';
import type { LessonSum } from '$lib/lessons';

export default [
	{
		id: 'thinner-nobody-wrote-down',
		asks: {
			en: 'The comb read the same wet film on both racks. What is left dry on the rack whose mix got more thinner than the sheet allows?',
			es: 'El peine leyó la misma película húmeda en los dos bastidores. ¿Qué queda seco en el que llevó más diluyente del que permite la hoja?'
		},
		work() {
			const wet = given('length', micrometres(80), {
				en: 'Wet film on both racks, WFT',
				es: 'Película húmeda en los dos, WFT'
			});
			const solids = given('fraction', percent(30), {
				en: 'Volume solids on the sheet, VS',
				es: 'Sólidos en volumen según la hoja, VS'
			});
			const rack = (thinner: number, en: string, es: string) =>
				dryFilm.of({ wet, solids, thinner: given('fraction', percent(thinner), { en, es }) });
			return [
				rack(5, 'Thinner in the mix of the first rack, x', 'Diluyente en la mezcla del primero, x'),
				rack(25, 'Thinner in the mix of the second rack, x', 'Diluyente en la mezcla del segundo, x')
			];
		}
	}
] as const satisfies readonly LessonSum[];

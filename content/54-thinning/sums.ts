import { cupViscosity, given, micrometres, percent, seconds, wetFilm } from '$lib/engine';
import type { LessonSum } from '$lib/lessons';

export default [
	{
		id: 'thinned-film',
		asks: {
			en: 'The same dry film, once with the paint as mixed and once thinned. How much wet film does each need?',
			es: 'La misma película seca, una vez con la pintura tal como se mezcló y otra diluida. ¿Cuánta película húmeda pide cada una?'
		},
		work() {
			const dry = given('length', micrometres(24), {
				en: 'Dry film wanted, DFT',
				es: 'Película seca pedida, DFT'
			});
			const solids = given('fraction', percent(40), {
				en: 'Volume solids on the sheet, VS',
				es: 'Sólidos en volumen según la hoja, VS'
			});
			const asMixed = given('fraction', percent(0), {
				en: 'Thinner in the first cup, x',
				es: 'Diluyente en el primer vaso, x'
			});
			const thinned = given('fraction', percent(10), {
				en: 'Thinner in the second cup, x',
				es: 'Diluyente en el segundo vaso, x'
			});
			return [wetFilm.of({ dry, solids, thinner: asMixed }), wetFilm.of({ dry, solids, thinner: thinned })];
		}
	},
	{
		id: 'seconds-of-a-cup',
		asks: {
			en: 'The same mix runs through two cups. The seconds differ, the paint does not: this is what each cup reads.',
			es: 'La misma mezcla pasa por dos copas. Los segundos cambian, la pintura no: esto es lo que lee cada copa.'
		},
		work: () => [
			cupViscosity['ford-4'].of({
				time: given('duration', seconds(20), { en: 'Ford cup 4, t', es: 'Copa Ford 4, t' })
			}),
			cupViscosity['dip-cup-2'].of({
				time: given('duration', seconds(31), { en: 'Dip cup 2, t', es: 'Copa de inmersión 2, t' })
			})
		]
	}
] as const satisfies readonly LessonSum[];

import { celsius, given, millimetres, shopValue, thermal, wallHeatUp } from '$lib/engine';
import type { LessonSum } from '$lib/lessons';

export default [
	{
		id: 'casting-warms-up',
		asks: {
			en: 'A cast cover and a cast housing with walls three times as thick go into one oven. How long until each is hot enough for its clock to start?',
			es: 'Una tapa fundida y una carcasa fundida con paredes tres veces más gruesas entran a un mismo horno. ¿Cuánto tarda cada una en llegar al calor con que arranca su reloj?'
		},
		work(shop) {
			const shared = {
				...thermal('aluminium-casting'),
				heatTransfer: shopValue(shop, 'cure.heat-transfer'),
				start: given('temperature', celsius(20), {
					en: 'Castings at the start, T₀',
					es: 'Fundiciones al empezar, T₀'
				}),
				air: given('temperature', celsius(190), { en: 'Air in the oven, T∞', es: 'Aire del horno, T∞' }),
				target: given('temperature', celsius(180), {
					en: 'Casting to reach, T',
					es: 'La fundición debe llegar a, T'
				})
			};
			const of = (wall: number, en: string, es: string) =>
				wallHeatUp.of({ ...shared, depth: given('length', millimetres(wall / 2), { en, es }) });
			return [
				of(6, 'Half the wall of the cover, L', 'Media pared de la tapa, L'),
				of(18, 'Half the wall of the housing, L', 'Media pared de la carcasa, L')
			];
		}
	}
] as const satisfies readonly LessonSum[];

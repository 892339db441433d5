import {
	filmPerPass,
	given,
	metresPerSecond,
	millilitresPerMinute,
	millimetres,
	percent,
	shopValue
} from '$lib/engine';
import type { LessonSum } from '$lib/lessons';

export default [
	{
		id: 'one-pass',
		asks: {
			en: 'A tired arm slows down. What does one pass leave at the speed of the morning, and what at that of the afternoon?',
			es: 'El brazo cansado va más lento. ¿Cuánto deja una pasada a la velocidad de la mañana y cuánto a la de la tarde?'
		},
		work(shop) {
			const flow = given('flow', millilitresPerMinute(60), {
				en: 'Paint through the tip, Q',
				es: 'Pintura que sale por el pico, Q'
			});
			const solids = given('fraction', percent(30), {
				en: 'Volume solids on the sheet, VS',
				es: 'Sólidos en volumen según la hoja, VS'
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

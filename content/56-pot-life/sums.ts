import { celsius, given, hours, latestAge, potLifeAt, shopWindow, type Kelvin, type Shop } from '$lib/engine';
import type { LessonSum } from '$lib/lessons';

const stated = given('duration', hours(3), { en: 'Pot life on the sheet, t₀', es: 'Vida según la hoja, t₀' });
const statedAt = given('temperature', celsius(21), {
	en: 'Temperature it is stated at, T₀',
	es: 'Temperatura a la que vale, T₀'
});

const latestWith = (paint: Kelvin, shop: Shop) => {
	const mix = given('temperature', paint, {
		en: 'Temperature of the paint, T',
		es: 'Temperatura de la pintura, T'
	});
	return latestAge(potLifeAt.of({ stated, statedAt, mix }), shopWindow(shop, 'mix.pot-life-share').max);
};

export default [
	{
		id: 'hot-afternoon',
		asks: {
			en: 'The tin roof has been in the sun since noon and the paint is warm. Until what age may the mix be sprayed?',
			es: 'Al techo de lámina le da el sol desde mediodía y la pintura está tibia. ¿Hasta qué edad se puede aplicar la mezcla?'
		},
		work: (shop) => latestWith(celsius(34), shop)
	},
	{
		id: 'cold-morning',
		asks: {
			en: 'The same sheet on a cold morning: the paint is cooler than the sheet reckons with. Until what age now?',
			es: 'La misma hoja en una mañana fría: la pintura está más fresca de lo que calcula la hoja. ¿Hasta qué edad ahora?'
		},
		work: (shop) => latestWith(celsius(16), shop)
	}
] as const satisfies readonly LessonSum[];

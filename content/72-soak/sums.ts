import {
	celsius,
	cureEquivalence,
	given,
	kilojoulesPerMole,
	millimetres,
	minutes,
	shopValue,
	thermal,
	wallHeatUp
} from '$lib/engine';
import type { LessonSum } from '$lib/lessons';

export default [
	{
		id: 'four-walls',
		asks: {
			en: 'Four walls in the same oven: thin steel, steel three times as thick, and aluminium and plastic as thick as that. How long does each heat?',
			es: 'Cuatro paredes en el mismo horno: acero delgado, acero del triple de grueso, y aluminio y plástico de ese mismo grueso. ¿Cuánto tarda cada una en calentar?'
		},
		work(shop) {
			const oven = {
				heatTransfer: shopValue(shop, 'cure.heat-transfer'),
				start: given('temperature', celsius(20), {
					en: 'Parts at the start, T₀',
					es: 'Piezas al empezar, T₀'
				}),
				air: given('temperature', celsius(90), { en: 'Air in the oven, T∞', es: 'Aire del horno, T∞' }),
				target: given('temperature', celsius(80), {
					en: 'Part to reach, T',
					es: 'La pieza debe llegar a, T'
				})
			};
			const half = (wall: number, en: string, es: string) =>
				given('length', millimetres(wall / 2), { en, es });
			const thick = half(6, 'Half of the thick wall, L', 'Mitad de la pared gruesa, L');
			const steel = thermal('carbon-steel');
			return [
				wallHeatUp.of({
					...oven,
					...steel,
					depth: half(2, 'Half of the thin wall, L', 'Mitad de la pared delgada, L')
				}),
				wallHeatUp.of({ ...oven, ...steel, depth: thick }),
				wallHeatUp.of({ ...oven, ...thermal('aluminium-6061'), depth: thick }),
				wallHeatUp.of({ ...oven, ...thermal('polycarbonate'), depth: thick })
			];
		}
	},
	{
		id: 'ten-degrees-short',
		asks: {
			en: 'How much longer would one reaction take in an oven that stays a little too cool?',
			es: '¿Cuánto más tardaría una misma reacción en un horno que se queda un poco frío?'
		},
		work: () =>
			cureEquivalence.of({
				stated: given('duration', minutes(20), {
					en: 'Hold on the sheet, t₁',
					es: 'Tiempo de curado de la hoja, t₁'
				}),
				statedAt: given('temperature', celsius(150), {
					en: 'Temperature on the sheet, T₁',
					es: 'Temperatura de la hoja, T₁'
				}),
				at: given('temperature', celsius(140), {
					en: 'Temperature of the part, T₂',
					es: 'Temperatura de la pieza, T₂'
				}),
				activation: given('molar-energy', kilojoulesPerMole(67), {
					en: 'Activation energy, E (no sheet prints it)',
					es: 'Energía de activación, E (ninguna hoja la trae)'
				})
			})
	}
] as const satisfies readonly LessonSum[];

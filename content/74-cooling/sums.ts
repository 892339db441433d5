import {
	celsius,
	given,
	millimetres,
	thermal,
	wallHeatUp,
	wattsPerSquareMetreKelvin,
	type Text
} from '$lib/engine';
import type { LessonSum } from '$lib/lessons';

export default [
	{
		id: 'plate-and-block',
		asks: {
			en: 'A thin steel plate and a thick steel block hang in still air. When may each be handled?',
			es: 'Una placa delgada y un bloque grueso, de acero, cuelgan en aire quieto. ¿Cuándo se puede manipular cada uno?'
		},
		work() {
			const air = {
				...thermal('carbon-steel'),
				heatTransfer: given('heat-transfer', wattsPerSquareMetreKelvin(10), {
					en: 'Heat that a part gives to still air, h',
					es: 'Calor que una pieza da al aire quieto, h'
				}),
				start: given('temperature', celsius(150), {
					en: 'Parts out of the oven, T₀',
					es: 'Piezas al salir del horno, T₀'
				}),
				air: given('temperature', celsius(22), { en: 'Air in the shop, T∞', es: 'Aire del taller, T∞' }),
				target: given('temperature', celsius(40), {
					en: 'Part to reach, T',
					es: 'La pieza debe llegar a, T'
				})
			};
			const cooling = (half: number, of: Text, label: Text) => ({
				...wallHeatUp.of({ ...air, depth: given('length', millimetres(half), of) }),
				label
			});
			return [
				cooling(
					1.5,
					{ en: 'Half the wall of the plate, L', es: 'Media pared de la placa, L' },
					{ en: 'Plate, time to cool', es: 'Placa, tiempo hasta enfriar' }
				),
				cooling(
					10,
					{ en: 'Half the wall of the block, L', es: 'Media pared del bloque, L' },
					{ en: 'Block, time to cool', es: 'Bloque, tiempo hasta enfriar' }
				)
			];
		}
	}
] as const satisfies readonly LessonSum[];

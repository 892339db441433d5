import {
	areaOfPieces,
	batchVolume,
	count,
	given,
	grams,
	gramsPerMillilitre,
	hardenerForBase,
	micrometres,
	millilitres,
	millimetres,
	mixSplit,
	partArea,
	percent,
	ratio,
	ratioByMass,
	shopValue,
	withReserve
} from '$lib/engine';
import type { LessonSum } from '$lib/lessons';

const byVolume = given('ratio', ratio(4), {
	en: 'Ratio on the sheet, by volume, r',
	es: 'Relación de la hoja, en volumen, r'
});

export default [
	{
		id: 'thirty-seven-brackets',
		asks: {
			en: 'A lot of bent brackets, sheet metal, both faces to be coated. How much has to be mixed?',
			es: 'Un lote de soportes doblados, de lámina, por recubrir en las dos caras. ¿Cuánto hay que mezclar?'
		},
		work(shop) {
			const one = partArea.bracket.of({
				leg: given('length', millimetres(120), { en: 'One leg', es: 'Un ala' }),
				otherLeg: given('length', millimetres(80), { en: 'Other leg', es: 'La otra ala' }),
				width: given('length', millimetres(60), { en: 'Width', es: 'Ancho' }),
				sides: given('count', count(2), { en: 'Sides coated', es: 'Caras por recubrir' })
			});
			const pieces = given('count', count(37), { en: 'Brackets', es: 'Soportes' });
			const area = areaOfPieces(one, pieces, {
				en: 'Area of all brackets',
				es: 'Área de todos los soportes'
			});
			const needed = batchVolume.of({
				area,
				dry: given('length', micrometres(20), {
					en: 'Dry film wanted, DFT',
					es: 'Película seca pedida, DFT'
				}),
				solids: given('fraction', percent(32), {
					en: 'Volume solids on the sheet, VS',
					es: 'Sólidos en volumen según la hoja, VS'
				}),
				transfer: shopValue(shop, 'spray.transfer')
			});
			return withReserve(needed, shop);
		}
	},
	{
		id: 'split-by-volume',
		asks: {
			en: 'The batch for the brackets, with some reserve, is split between two measuring cups.',
			es: 'La mezcla para los soportes, con algo de reserva, se reparte en dos vasos medidores.'
		},
		work() {
			const batch = given('volume', millilitres(120), { en: 'Batch', es: 'Mezcla completa (batch)' });
			return [
				mixSplit.volume.base.of({ batch, ratio: byVolume }),
				mixSplit.volume.hardener.of({ batch, ratio: byVolume })
			];
		}
	},
	{
		id: 'hardener-on-the-scale',
		asks: {
			en: 'The sheet gives the ratio by volume, the bench has a scale. How much hardener goes to the base in the cup?',
			es: 'La hoja da la relación en volumen y en el banco hay una balanza. ¿Cuánto endurecedor pide la base que está en el vaso?'
		},
		work: () =>
			hardenerForBase.mass.of({
				base: given('mass', grams(150), { en: 'Base in the cup, A', es: 'Base en el vaso, A' }),
				ratio: ratioByMass.of({
					byVolume,
					densityA: given('density', gramsPerMillilitre(1.25), {
						en: 'Density of the base, ρA',
						es: 'Densidad de la base, ρA'
					}),
					densityB: given('density', gramsPerMillilitre(1.05), {
						en: 'Density of the hardener, ρB',
						es: 'Densidad del endurecedor, ρB'
					})
				})
			})
	}
] as const satisfies readonly LessonSum[];

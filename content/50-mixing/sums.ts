import {
	areaOfPieces,
	batchVolume,
	catalystShare,
	celsius,
	count,
	cupViscosity,
	given,
	grams,
	gramsPerMillilitre,
	hardenerForBase,
	hours,
	latestAge,
	micrometres,
	millimetres,
	millilitres,
	mixSplit,
	partArea,
	percent,
	potLifeAt,
	ratio,
	ratioByMass,
	seconds,
	shopValue,
	shopWindow,
	spreadingRate,
	withReserve
} from '$lib/engine';
import type { LessonSum } from '$lib/lessons';

const solids = given('fraction', percent(32), {
	en: 'Volume solids on the sheet, VS',
	es: 'Sólidos en volumen según la hoja, VS'
});
const dry = given('length', micrometres(20), { en: 'Dry film wanted, DFT', es: 'Película seca pedida, DFT' });
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
			const needed = batchVolume.of({ area, dry, solids, transfer: shopValue(shop, 'spray.transfer') });
			return withReserve(needed, shop);
		}
	},
	{
		id: 'how-far-a-can-goes',
		asks: {
			en: 'The same coating on a larger order. What area does each measure of it cover?',
			es: 'El mismo recubrimiento en un pedido más grande. ¿Qué área cubre cada medida?'
		},
		work: (shop) => spreadingRate.of({ dry, solids, transfer: shopValue(shop, 'spray.transfer') })
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
		id: 'percent-of-what',
		asks: {
			en: 'A catalyst goes in at a few parts to the hundred of base. Which percentage is that?',
			es: 'Un catalizador entra a unas pocas partes por cien de base. ¿Qué porcentaje es eso?'
		},
		work() {
			const ratioOfSheet = given('ratio', ratio(25), {
				en: 'Ratio on the sheet, r',
				es: 'Relación de la hoja, r'
			});
			return [
				catalystShare.ofBase.of({ ratio: ratioOfSheet }),
				catalystShare.ofTotal.of({ ratio: ratioOfSheet })
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
	},
	{
		id: 'hot-afternoon',
		asks: {
			en: 'The tin roof has been in the sun since noon and the paint is warm. Until what age may the mix be sprayed?',
			es: 'El techo de lámina lleva al sol desde mediodía y la pintura está tibia. ¿Hasta qué edad se puede aplicar la mezcla?'
		},
		work(shop) {
			const life = potLifeAt.of({
				stated: given('duration', hours(3), {
					en: 'Pot life on the sheet, t₀',
					es: 'Vida según la hoja, t₀'
				}),
				statedAt: given('temperature', celsius(21), {
					en: 'Temperature it is stated at, T₀',
					es: 'Temperatura a la que vale, T₀'
				}),
				mix: given('temperature', celsius(34), {
					en: 'Temperature of the paint, T',
					es: 'Temperatura de la pintura, T'
				})
			});
			return latestAge(life, shopWindow(shop, 'mix.pot-life-share').max);
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

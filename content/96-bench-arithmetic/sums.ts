import {
	areaOfPieces,
	catalystShare,
	count,
	given,
	grams,
	gramsPerMillilitre,
	micrometres,
	millimetres,
	mixSplit,
	partArea,
	percent,
	ratio,
	ratioByMass,
	shopValue,
	spreadingRate
} from '$lib/engine';
import type { LessonSum } from '$lib/lessons';

export default [
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
		id: 'batch-on-the-scale',
		asks: {
			en: 'The sheet gives the ratio by volume and a whole batch is to be weighed out. How much is base, how much hardener?',
			es: 'La hoja da la relación en volumen y hay que pesar una mezcla completa. ¿Cuánto es base y cuánto endurecedor?'
		},
		work() {
			const batch = given('mass', grams(260), { en: 'Batch', es: 'Mezcla completa (batch)' });
			const byWeight = ratioByMass.of({
				byVolume: given('ratio', ratio(3), {
					en: 'Ratio on the sheet, by volume, r',
					es: 'Relación de la hoja, en volumen, r'
				}),
				densityA: given('density', gramsPerMillilitre(1.3), {
					en: 'Density of the base, ρA',
					es: 'Densidad de la base, ρA'
				}),
				densityB: given('density', gramsPerMillilitre(1), {
					en: 'Density of the hardener, ρB',
					es: 'Densidad del endurecedor, ρB'
				})
			});
			return [
				mixSplit.mass.base.of({ batch, ratio: byWeight }),
				mixSplit.mass.hardener.of({ batch, ratio: byWeight })
			];
		}
	},
	{
		id: 'two-dozen-tubes',
		asks: {
			en: 'A lot of tubes, coated on the outside only. What area is that?',
			es: 'Un lote de tubos, recubiertos solo por fuera. ¿Qué área es?'
		},
		work() {
			const one = partArea.tube.of({
				outer: given('length', millimetres(25), { en: 'Outer diameter', es: 'Diámetro exterior (outer ⌀)' }),
				inner: given('length', millimetres(21), { en: 'Inner diameter', es: 'Diámetro interior (inner ⌀)' }),
				length: given('length', millimetres(400), { en: 'Length', es: 'Largo (length)' }),
				sides: given('count', count(1), { en: 'Sides coated', es: 'Caras por recubrir (sides)' })
			});
			const pieces = given('count', count(24), { en: 'Tubes', es: 'Tubos' });
			return areaOfPieces(one, pieces, { en: 'Area of all tubes', es: 'Área de todos los tubos' });
		}
	},
	{
		id: 'how-far-a-can-goes',
		asks: {
			en: 'One coating, one film, a large order. What area does each measure of it cover?',
			es: 'Un recubrimiento, una película, un pedido grande. ¿Qué área cubre cada medida?'
		},
		work: (shop) =>
			spreadingRate.of({
				dry: given('length', micrometres(20), {
					en: 'Dry film wanted, DFT',
					es: 'Película seca pedida, DFT'
				}),
				solids: given('fraction', percent(32), {
					en: 'Volume solids on the sheet, VS',
					es: 'Sólidos en volumen según la hoja, VS'
				}),
				transfer: shopValue(shop, 'spray.transfer')
			})
	}
] as const satisfies readonly LessonSum[];

import {
	blastNozzleAir,
	deliveryNeeded,
	given,
	millimetres,
	NOZZLE_BORES,
	NOZZLES,
	shopValue,
	shopWindow,
	wornNozzleAir
} from '$lib/engine';
import type { LessonSum } from '$lib/lessons';

export default [
	{
		id: 'air-by-nozzle',
		asks: {
			en: 'How much air does a nozzle take at the top of the shop’s window for steel, and how much one of about twice the bore?',
			es: '¿Cuánto aire toma una boquilla en el tope de la ventana del taller para acero, y cuánto una de más o menos el doble de diámetro?'
		},
		work(shop) {
			const gauge = shopWindow(shop, 'blast.pressure.steel').max;
			const coefficient = shopValue(shop, 'blast.nozzle-coefficient');
			return (['bore-4-8', 'bore-9-5'] as const).map((nozzle) => {
				const { en, es } = NOZZLES[nozzle];
				const bore = given('length', NOZZLE_BORES[nozzle], { en: `Bore, ${en}`, es: `Diámetro, ${es}` });
				const label = { en: `Free air through ${en}`, es: `Aire libre por la de ${es}` };
				return { ...blastNozzleAir.of({ bore, gauge, coefficient }), label };
			});
		}
	},
	{
		id: 'nozzle-and-compressor',
		asks: {
			en: 'The cabinet blasts steel at the top of the shop’s window. What must the compressor deliver, and what once the nozzle has worn?',
			es: 'La cabina granalla acero en el tope de la ventana del taller. ¿Cuánto debe entregar el compresor, y cuánto cuando la boquilla ya se gastó?'
		},
		work(shop) {
			const bore = given('length', millimetres(5), {
				en: 'Bore of the new nozzle, d',
				es: 'Diámetro de la boquilla nueva, d'
			});
			const fresh = blastNozzleAir.of({
				bore,
				gauge: shopWindow(shop, 'blast.pressure.steel').max,
				coefficient: {
					...shopValue(shop, 'blast.nozzle-coefficient'),
					label: {
						en: 'Flow coefficient with grain in the air, C',
						es: 'Coeficiente de flujo con abrasivo en el aire, C'
					}
				}
			});
			const worn = wornNozzleAir.of({
				air: fresh,
				bore,
				worn: given('length', millimetres(6), {
					en: 'Bore of the worn nozzle, d′',
					es: 'Diámetro de la boquilla gastada, d′'
				})
			});
			const rest = {
				duty: {
					...shopValue(shop, 'blast.duty'),
					label: { en: 'Share of the time it blasts (duty)', es: 'Parte del tiempo que granalla (duty)' }
				},
				leak: {
					...shopValue(shop, 'blast.leak'),
					label: { en: 'Lost in leaks (leak)', es: 'Pérdida por fugas (leak)' }
				},
				reserve: {
					...shopValue(shop, 'blast.reserve'),
					label: { en: 'Reserve on top (reserve)', es: 'Reserva adicional (reserve)' }
				}
			};
			return [deliveryNeeded.of({ demand: fresh, ...rest }), deliveryNeeded.of({ demand: worn, ...rest })];
		}
	}
] as const satisfies readonly LessonSum[];

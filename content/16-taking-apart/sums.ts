import { clearanceLeft, fitGrowth, given, micrometres, millimetres } from '$lib/engine';
import type { LessonSum } from '$lib/lessons';

export default [
	{
		id: 'pin-in-its-bore',
		asks: {
			en: 'A pin is to be coated and its bore stays bare. How much play is left at the thickest film the drawing allows, and how much does the thread on its end grow?',
			es: 'Un pasador se recubre y su agujero queda desnudo. ¿Cuánta holgura queda con la película más gruesa que permite el plano, y cuánto crece la rosca de su extremo?'
		},
		work() {
			const dry = given('length', micrometres(30), {
				en: 'Thickest dry film allowed on the pin, DFT',
				es: 'Película seca más gruesa permitida en el pasador, DFT'
			});
			return [
				clearanceLeft.of({
					bore: given('length', millimetres(12.05), { en: 'Bore', es: 'Agujero (bore)' }),
					boreDry: given('length', micrometres(0), { en: 'Film in the bore', es: 'Película en el agujero' }),
					shaft: given('length', millimetres(12), {
						en: 'Pin, bare (shaft)',
						es: 'Pasador sin recubrir (shaft)'
					}),
					shaftDry: dry
				}),
				fitGrowth.thread.of({ dry })
			];
		}
	}
] as const satisfies readonly LessonSum[];

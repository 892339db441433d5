import { fitGrowth, given, micrometres } from '$lib/engine';
import type { LessonSum } from '$lib/lessons';

export default [
	{
		id: 'bolt-without-mask',
		asks: {
			en: 'A bolt went through without a mask. How much did the film add to its outer diameter, and how much to its thread, where the nut bears?',
			es: 'Un tornillo pasó sin máscara. ¿Cuánto sumó la película a su diámetro exterior y cuánto a su rosca, donde apoya la tuerca?'
		},
		work() {
			const dry = given('length', micrometres(25), {
				en: 'Dry film on the bolt, DFT',
				es: 'Película seca en el tornillo, DFT'
			});
			return [fitGrowth.diameter.of({ dry }), fitGrowth.thread.of({ dry })];
		}
	}
] as const satisfies readonly LessonSum[];

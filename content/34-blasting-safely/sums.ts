import {
	count,
	decibels,
	given,
	hearingProtector,
	hours,
	minutes,
	noiseExposure,
	oneNumber
} from '$lib/engine';
import type { LessonSum } from '$lib/lessons';

const levels = [
	given('sound-level', decibels(98), { en: 'Noise at the cabinet', es: 'Ruido en la cabina' }),
	given('sound-level', decibels(102), { en: 'Noise at the blow-off', es: 'Ruido al sopletear' })
] as const;

export default [
	{
		id: 'blasting-shift',
		asks: {
			en: 'A shift with some hours at the cabinet and a little blow-off. How much of the permitted noise is that, by the law and by the health advice?',
			es: 'Un turno con unas horas en la cabina y algo de sopleteo. ¿Qué parte del ruido permitido es eso, según la ley y según la recomendación de salud?'
		},
		work() {
			const shift = {
				levels,
				durations: [
					given('duration', hours(2.5), { en: 'Time at the cabinet', es: 'Tiempo en la cabina' }),
					given('duration', minutes(30), { en: 'Time at the blow-off', es: 'Tiempo sopleteando' })
				]
			};
			const legal = oneNumber(
				noiseExposure.osha.dose,
				shift,
				'fraction',
				{ en: 'Dose by the law (dose)', es: 'Dosis según la ley (dose)' },
				(dose) => dose
			);
			return [
				noiseExposure.osha.average.of({ dose: legal }),
				oneNumber(
					noiseExposure.niosh.dose,
					shift,
					'fraction',
					{ en: 'Dose by the health advice', es: 'Dosis según la recomendación de salud' },
					(dose) => dose
				)
			];
		}
	},
	{
		id: 'under-the-plug',
		asks: {
			en: 'The pack of the ear plugs prints a rating. What reaches the ear on paper, and what to reckon with at work?',
			es: 'El empaque de los tapones trae un valor de reducción. ¿Qué llega al oído en el papel, y con qué hay que contar en el trabajo?'
		},
		work() {
			const plug = {
				level: levels[0],
				rating: given('count', count(25), { en: 'Rating printed, NRR', es: 'Valor impreso, NRR' })
			};
			return [hearingProtector.a.of(plug), hearingProtector.aHalved.of(plug)];
		}
	}
] as const satisfies readonly LessonSum[];

import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'order', rule: 'preparation-order', kind: 'field', example: 'steel-plates' },
	{ id: 'plastic', rule: 'cleaner-suits-material', kind: 'field', example: 'abs-shells' },
	{ id: 'aluminium', rule: 'cleaner-suits-material', kind: 'field', example: 'aluminium-brackets' },
	{
		id: 'tank',
		rule: 'no-open-chlorinated-dip',
		kind: 'reason',
		question: {
			en: 'Behind the oven stands an open tray of chlorinated solvent. The wash is broken and the job is late. What do you do?',
			es: 'Detrás del horno hay una bandeja abierta con solvente clorado. El lavado no funciona y el trabajo va tarde. ¿Qué hace?'
		},
		options: {
			quick: {
				en: 'dip the parts quickly and hold your breath',
				es: 'sumergir las piezas rápido y aguantar la respiración'
			},
			pour: {
				en: 'pour it down the drain so that it is gone',
				es: 'vaciarla al drenaje para que ya no esté'
			},
			tell: {
				en: 'leave it, keep others away and tell the supervisor',
				es: 'no tocarla, alejar a los demás y avisar al supervisor'
			}
		},
		right: 'tell',
		because: {
			en: 'The vapour is in the air whether you dip or not, and the heat of the oven turns it into something worse. In the drain it only moves to other people.',
			es: 'El vapor está en el aire aunque usted no sumerja nada, y el calor del horno lo vuelve algo peor. En el drenaje solo les llega a otros.'
		}
	},
	{ id: 'whole-minute', rule: 'water-break-whole-minute', kind: 'field', example: 'steel-plates' },
	{
		id: 'soap',
		rule: 'water-break-whole-minute',
		kind: 'reason',
		question: {
			en: 'The water film stays whole, but the part came straight from the detergent tank. What does that tell you?',
			es: 'La película de agua queda entera, pero la pieza viene directo de la tina de detergente. ¿Qué le dice eso?'
		},
		options: {
			clean: { en: 'the part is clean', es: 'la pieza está limpia' },
			nothing: {
				en: 'nothing yet: soap holds water too, so rinse and test again',
				es: 'nada todavía: el jabón también sostiene el agua; enjuague y pruebe otra vez'
			},
			dirty: { en: 'the part is dirty', es: 'la pieza está sucia' }
		},
		right: 'nothing',
		because: {
			en: 'Soap makes water spread over oil. Only on a well rinsed face does a closed sheet mean a clean face.',
			es: 'El jabón hace que el agua se extienda sobre el aceite. Solo en una cara bien enjuagada una lámina entera significa cara limpia.'
		}
	}
] as const satisfies readonly LessonCheck[];

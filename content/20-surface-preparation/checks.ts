import type { LessonCheck } from '$lib/lessons';

export default [
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
	},
	{ id: 'pressure', rule: 'blast-pressure', kind: 'field', example: 'aluminium-brackets' },
	{ id: 'blow-off', rule: 'blow-off-below-30-psi', kind: 'field', example: 'steel-plates' },
	{ id: 'overdue', rule: 'overdue-starts-again', kind: 'field', example: 'overdue-plates' },
	{
		id: 'bleeding',
		rule: 'bake-out-temperature',
		kind: 'reason',
		question: {
			en: 'Why is a casting baked out hotter than it will be cured?',
			es: '¿Por qué una fundición se desgasifica más caliente de lo que se va a curar?'
		},
		options: {
			quick: { en: 'so that the cure takes less time later', es: 'para que después el curado dure menos' },
			harden: { en: 'so that the metal gets harder', es: 'para que el metal se endurezca' },
			gas: {
				en: 'so that what would come out at curing heat is gone before the film is on',
				es: 'para que lo que saldría al calor del curado ya no esté cuando hay película'
			}
		},
		right: 'gas',
		because: {
			en: 'Whatever leaves the pores only at curing heat goes through the wet film. A bake-out that stays cooler leaves exactly that behind.',
			es: 'Lo que sale de los poros recién al calor del curado atraviesa la película húmeda. Un desgasificado más frío deja justo eso adentro.'
		}
	},
	{ id: 'order', rule: 'preparation-order', kind: 'field', example: 'steel-plates' }
] as const satisfies readonly LessonCheck[];

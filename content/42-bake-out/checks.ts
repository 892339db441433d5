import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'hot', rule: 'bake-out-temperature', kind: 'field', example: 'castings' },
	{
		id: 'hotter',
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
			es: 'Lo que sale de los poros solo al calor del curado atraviesa la película húmeda. Un desgasificado más frío deja justo eso adentro.'
		}
	},
	{ id: 'long', rule: 'bake-out-time', kind: 'field', example: 'castings' },
	{
		id: 'door',
		rule: 'bake-out-time',
		kind: 'reason',
		question: {
			en: 'Thin covers and one thick housing are baked out together. When does the time for the housing begin?',
			es: 'Tapas delgadas y una carcasa gruesa se desgasifican juntas. ¿Cuándo empieza el tiempo de la carcasa?'
		},
		options: {
			shut: { en: 'when the door is shut', es: 'cuando se cierra la puerta' },
			thick: {
				en: 'when the thickest spot of the housing is at temperature',
				es: 'cuando el punto más grueso de la carcasa llega a la temperatura'
			},
			covers: { en: 'when the covers are hot', es: 'cuando las tapas están calientes' }
		},
		right: 'thick',
		because: {
			en: 'The covers are hot long before. The pores of the housing only begin to empty when its own metal is hot.',
			es: 'Las tapas se calientan mucho antes. Los poros de la carcasa empiezan a vaciarse cuando su propio metal está caliente.'
		}
	},
	{ id: 'bleeding', rule: 'residue-repeats-loop', kind: 'field', example: 'bleeding-castings' },
	{ id: 'nylon', rule: 'wet-polymer-dried', kind: 'field', example: 'damp-polyamide' }
] as const satisfies readonly LessonCheck[];

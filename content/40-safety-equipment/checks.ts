import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'torn-seal', rule: 'cabinet-sound-before-blasting', kind: 'field', example: 'torn-cabinet' },
	{
		id: 'rags',
		rule: 'rags-in-metal-can',
		kind: 'reason',
		question: {
			en: 'Why do solvent rags not stay in the open bin until the evening?',
			es: '¿Por qué los trapos con solvente no se quedan en el bote abierto hasta la tarde?'
		},
		options: {
			smell: { en: 'because the shop smells of them', es: 'porque el taller huele' },
			heat: {
				en: 'because their vapour burns and a heap of them can heat itself',
				es: 'porque su vapor arde y un montón puede calentarse solo'
			},
			dry: { en: 'because dry rags cannot be used again', es: 'porque secos ya no sirven' }
		},
		right: 'heat',
		because: {
			en: 'Nobody has to bring a spark: residue that goes on reacting in a heap can start the fire by itself, often at night.',
			es: 'Nadie tiene que acercar una chispa: el residuo que sigue reaccionando en un montón puede prenderse solo, muchas veces de noche.'
		}
	},
	{ id: 'isocyanate', rule: 'air-fed-for-isocyanate', kind: 'field', example: 'steel-plates' },
	{ id: 'may-spray', rule: 'may-wear-it', kind: 'field', example: 'bearded-sprayer' },
	{
		id: 'visor',
		rule: 'mask-on-until-clear',
		kind: 'reason',
		question: {
			en: 'The last pass is done and the gun hangs on its hook. You want to see the gloss. When may the visor go up?',
			es: 'Terminó la última pasada y la pistola ya está en su gancho. Usted quiere ver el brillo. ¿Cuándo se puede levantar la visera?'
		},
		options: {
			settled: { en: 'when no mist can be seen any more', es: 'cuando ya no se ve neblina' },
			gun: { en: 'as soon as the gun is off', es: 'en cuanto la pistola está apagada' },
			measured: {
				en: 'when the measured clearance time of this booth is over',
				es: 'cuando pasó el tiempo de limpieza medido de esta cabina'
			}
		},
		right: 'measured',
		because: {
			en: 'The finest mist cannot be seen and stays longest. Only the time measured with smoke says when it is gone.',
			es: 'La neblina más fina no se ve y es la que más tarda. Solo el tiempo medido con humo dice cuándo se fue.'
		}
	},
	{ id: 'wait', rule: 'mask-on-until-clear', kind: 'field', example: 'steel-plates' }
] as const satisfies readonly LessonCheck[];

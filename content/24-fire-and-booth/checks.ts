import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'weak-booth', rule: 'booth-air-speed', kind: 'field', example: 'weak-booth' },
	{
		id: 'rags',
		rule: 'rags-in-metal-can',
		kind: 'reason',
		question: {
			en: 'Why do solvent rags not stay in the open bin until the evening?',
			es: '¿Por qué los trapos con solvente no se quedan en el bote abierto hasta el final del día?'
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
	{ id: 'left-over', rule: 'left-over-reacts-in-open-pan', kind: 'field', example: 'steel-plates' },
	{ id: 'oven-gear', rule: 'gear-for-the-oven', kind: 'field', example: 'steel-plates' },
	{
		id: 'flame-elsewhere',
		rule: 'booth-air-speed',
		kind: 'reason',
		question: {
			en: 'The booth pulls too little, but no flame and no spark is near. Why is spraying still stopped?',
			es: 'La cabina jala poco, pero no hay llama ni chispa cerca. ¿Por qué se para de todos modos?'
		},
		options: {
			gloss: { en: 'because the film would get too glossy', es: 'porque la película quedaría muy brillante' },
			filters: { en: 'because filters would last less long', es: 'porque los filtros durarían menos' },
			creeps: {
				en: 'because vapour builds up, is breathed, and creeps to a spark that is far away',
				es: 'porque el vapor se junta, se respira y se arrastra hasta una chispa lejana'
			}
		},
		right: 'creeps',
		because: {
			en: 'Vapour that is not carried off goes where people breathe and along the floor. Nobody knows every switch and heater it meets.',
			es: 'El vapor que no se extrae llega a donde se respira y corre por el piso. Nadie conoce cada interruptor y calentador que encuentra.'
		}
	}
] as const satisfies readonly LessonCheck[];

import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'plates', rule: 'cool-before-handling', kind: 'field', example: 'steel-plates' },
	{
		id: 'which-part',
		rule: 'cool-before-handling',
		kind: 'reason',
		question: {
			en: 'Thin covers and thick blocks hang on one rack. Where do you hold the probe before you touch the load?',
			es: 'Tapas delgadas y bloques gruesos cuelgan en un bastidor. ¿Dónde pone la sonda antes de tocar la carga?'
		},
		options: {
			cover: {
				en: 'On a cover: it hangs in front and is easy to reach.',
				es: 'En una tapa: cuelga adelante y se alcanza fácil.'
			},
			rack: {
				en: 'On the rack: I have to grip it anyway.',
				es: 'En el bastidor: de todos modos hay que agarrarlo.'
			},
			block: {
				en: 'On a block, at its thickest section: it cools last.',
				es: 'En un bloque, en su sección más gruesa: es el último en enfriar.'
			}
		},
		right: 'block',
		because: {
			en: 'The thick wall holds the most heat and gives it away no faster. When it is cold enough, everything else is.',
			es: 'La pared gruesa guarda más calor y no lo suelta más rápido. Cuando ella está fría, lo demás también.'
		}
	},
	{
		id: 'fan',
		rule: 'cool-before-handling',
		kind: 'reason',
		question: {
			en: 'The customer’s truck is at the gate. Someone wants to blow shop air on the hot panels. Why not?',
			es: 'El camión del cliente está en la puerta. Alguien quiere soplarles aire comprimido a los paneles calientes. ¿Por qué no?'
		},
		options: {
			uneven: {
				en: 'Thin parts bend when one side cools first, the film may craze, and the dust sticks.',
				es: 'Lo delgado se dobla si un lado enfría antes, la película se puede agrietar y el polvo se pega.'
			},
			noise: {
				en: 'Only because of the noise; otherwise it does no harm.',
				es: 'Solo por el ruido; por lo demás no hace daño.'
			},
			cure: {
				en: 'Because the parts would need a second soak after it.',
				es: 'Porque después necesitarían otra vez tiempo a temperatura.'
			}
		},
		right: 'uneven',
		because: {
			en: 'A warm film is still soft and a hot thin wall moves. Quick, one-sided cooling bends the part or cracks the film. Still, clean air costs time and nothing else.',
			es: 'La película tibia sigue blanda y la pared delgada caliente se mueve. Enfriar rápido y por un lado dobla la pieza o agrieta la película. El aire limpio y quieto solo cuesta tiempo.'
		}
	},
	{ id: 'shells', rule: 'cool-before-handling', kind: 'field', example: 'abs-shells' },
	{
		id: 'gauge-early',
		rule: 'cool-before-handling',
		kind: 'reason',
		question: {
			en: 'A part is still warm, and the gauge was zeroed on a cold piece. What is wrong with reading it now?',
			es: 'La pieza sigue tibia y el medidor se puso en cero sobre una pieza fría. ¿Qué tiene de malo medirla ahora?'
		},
		options: {
			solvent: {
				en: 'Nothing: a warm film only holds more solvent.',
				es: 'Nada: una película tibia solo guarda más solvente.'
			},
			warm: {
				en: 'The film is soft under the probe, and warm metal and a cold zero do not agree. The number is not true.',
				es: 'La película está blanda bajo la sonda, y metal tibio y cero en frío no concuerdan. El número no es cierto.'
			},
			battery: {
				en: 'The heat empties the battery of the gauge.',
				es: 'El calor descarga la pila del medidor.'
			}
		},
		right: 'warm',
		because: {
			en: 'A gauge compares with what it was zeroed on. The same metal, the same preparation, and as cold as that.',
			es: 'El medidor compara con aquello en lo que se puso en cero. El mismo metal, la misma preparación y la misma temperatura.'
		}
	}
] satisfies readonly LessonCheck[];

import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'hole', rule: 'blind-hole-down', kind: 'field', example: 'castings' },
	{
		id: 'hook',
		rule: 'blind-hole-down',
		kind: 'reason',
		question: {
			en: 'A pump cover has one blind hole and a masked thread. It only hangs opening down if the hook goes through a free hole in the show face. What do you do?',
			es: 'Una tapa de bomba tiene un agujero ciego y una rosca enmascarada. Solo cuelga con la abertura hacia abajo si el gancho entra por un agujero libre de la cara visible. ¿Qué hace?'
		},
		options: {
			up: {
				en: 'hang it by the thread, opening up, and blow the hole out twice',
				es: 'colgarla de la rosca, abertura hacia arriba, y soplar el agujero dos veces'
			},
			ask: {
				en: 'look for another hook or holder, and ask the lead if there is none',
				es: 'buscar otro gancho o soporte, y preguntar al responsable si no hay'
			},
			face: {
				en: 'hang it by the show face and touch up the dot later',
				es: 'colgarla de la cara visible y retocar el punto después'
			}
		},
		right: 'ask',
		because: {
			en: 'Opening up fills the hole again at the next rinse or drip, and a bare dot on a show face is the customer’s to allow. A bent hook or a holder under the part costs minutes.',
			es: 'Hacia arriba el agujero se llena con el próximo enjuague o goteo, y un punto desnudo en la cara visible solo lo puede permitir el cliente. Un gancho doblado o un soporte cuesta minutos.'
		}
	},
	{
		id: 'run',
		rule: 'blind-hole-down',
		kind: 'reason',
		question: {
			en: 'A run starts at a hole and goes down the face, with small burst blisters around it. The parts beside it have no hole and are fine. What is the likeliest cause?',
			es: 'Un escurrido empieza en un agujero y baja por la cara, con ampollas pequeñas reventadas alrededor. Las piezas vecinas no tienen agujero y están bien. ¿Cuál es la causa más probable?'
		},
		options: {
			liquid: {
				en: 'liquid stood in the hole and came out over the wet film',
				es: 'había líquido en el agujero y salió sobre la película húmeda'
			},
			near: { en: 'the parts hung too close together', es: 'las piezas colgaban muy juntas' },
			oven: {
				en: 'the oven was too hot for all of them',
				es: 'el horno estaba demasiado caliente para todas'
			}
		},
		right: 'liquid',
		because: {
			en: 'A fault of spacing or of the oven would show on the neighbours too. What sits at a hole came out of the hole.',
			es: 'Una falla de espacio o del horno se vería también en las vecinas. Lo que está junto a un agujero salió del agujero.'
		}
	},
	{ id: 'again', rule: 'blind-hole-down', kind: 'field', example: 'bleeding-castings' }
] as const satisfies readonly LessonCheck[];

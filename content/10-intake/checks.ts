import type { LessonCheck } from '$lib/lessons';

export default [
	{
		id: 'unknown-metal',
		rule: 'material-known',
		kind: 'reason',
		question: {
			en: 'Six light grey blocks came in. The ticket says only "metal". What do you do?',
			es: 'Llegaron seis bloques gris claro. La orden solo dice «metal». ¿Qué hace?'
		},
		options: {
			grind: { en: 'grind a corner and look at the sparks', es: 'esmerilar una esquina y mirar las chispas' },
			aluminium: {
				en: 'treat them as aluminium, they are light',
				es: 'tratarlos como aluminio, porque son livianos'
			},
			ask: {
				en: 'leave them as they are and ask what they are made of',
				es: 'dejarlos como están y preguntar de qué son'
			}
		},
		right: 'ask',
		because: {
			en: 'Light and grey fits aluminium and magnesium alike. Sparks in magnesium dust start a fire, and no setting is right for a metal without a name.',
			es: 'Liviano y gris puede ser aluminio o magnesio. Una chispa en polvo de magnesio inicia un incendio, y ningún ajuste es correcto para un metal sin nombre.'
		}
	},
	{
		id: 'closed-float',
		rule: 'sealed-cavity-stops',
		kind: 'reason',
		question: {
			en: 'A closed steel float has a pinhole in its weld. Why must it not go into the oven?',
			es: 'Un flotador cerrado de acero tiene un poro en la soldadura. ¿Por qué no debe entrar al horno?'
		},
		options: {
			trapped: {
				en: 'cleaner got in, cannot get out, and boils',
				es: 'el limpiador entró, no puede salir y hierve'
			},
			rust: { en: 'it rusts inside while it cures', es: 'se oxida por dentro mientras cura' },
			slow: { en: 'it takes too long to warm up', es: 'tarda demasiado en calentarse' }
		},
		right: 'trapped',
		because: {
			en: 'The hole that let the cleaner creep in is too small to let its vapour out. The part can burst, and solvent vapour can catch fire.',
			es: 'El poro que dejó entrar el limpiador es muy chico para dejar salir su vapor. La pieza puede reventar y el vapor de solvente puede prenderse.'
		}
	},
	{ id: 'lowest-limit', rule: 'part-limit-lowest', kind: 'field', example: 'knob-levers' },
	{ id: 'masks', rule: 'fit-faces-masked', kind: 'field', example: 'castings' },
	{ id: 'what-to-ask', rule: 'question-named', kind: 'field', example: 'unstated-film' },
	{ id: 'clear-job', rule: 'accept-when-clear', kind: 'field', example: 'steel-plates' }
] as const satisfies readonly LessonCheck[];

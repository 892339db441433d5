import type { LessonCheck } from '$lib/lessons';

export default [
	{
		id: 'closed-float',
		rule: 'sealed-cavity-stops',
		kind: 'reason',
		question: {
			en: 'A closed steel float has a pinhole in its weld. Why must it not go into the oven?',
			es: 'Un flotador cerrado de acero tiene un poro en la soldadura. ¿Por qué no debe entrar al horno?'
		},
		options: {
			rust: { en: 'it rusts inside while it cures', es: 'se oxida por dentro mientras cura' },
			trapped: {
				en: 'cleaner got in, cannot get out, and boils',
				es: 'el limpiador entró, no puede salir y hierve'
			},
			slow: { en: 'it takes too long to warm up', es: 'tarda demasiado en calentarse' }
		},
		right: 'trapped',
		because: {
			en: 'The hole that let the cleaner creep in is too small to let its vapour out. The part can burst, and solvent vapour can catch fire.',
			es: 'El poro que dejó entrar el limpiador es muy chico para dejar salir su vapor. La pieza puede reventar y el vapor de solvente puede prenderse.'
		}
	},
	{ id: 'bearing-in', rule: 'fitted-items-out', kind: 'field', example: 'fitted-bearings' },
	{ id: 'ring-growth', rule: 'growth-on-diameter', kind: 'field', example: 'titanium-rings' },
	{
		id: 'two-films',
		rule: 'growth-on-diameter',
		kind: 'reason',
		question: {
			en: 'Why do you work out the fit with the thickest film allowed and not with the one you aim at?',
			es: '¿Por qué se calcula el ajuste con la película más gruesa permitida y no con la que usted busca?'
		},
		options: {
			shrinks: { en: 'the film shrinks as it cures', es: 'la película se encoge al curar' },
			wear: { en: 'the film wears down in use', es: 'la película se gasta con el uso' },
			spread: {
				en: 'some part of the load will be that thick, and it has to fit too',
				es: 'alguna pieza de la carga llegará a ese espesor, y también tiene que encajar'
			}
		},
		right: 'spread',
		because: {
			en: 'No hand lays the same film on every part. A part at the top of the window passes inspection, so the fit must have room for it.',
			es: 'Nadie deja la misma película en cada pieza. La que queda en lo alto de la ventana pasa la inspección, así que el ajuste debe tener lugar para ella.'
		}
	}
] as const satisfies readonly LessonCheck[];

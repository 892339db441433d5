import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'which-gauge', rule: 'gauge-suits-substrate', kind: 'field', example: 'anodised-panels' },
	{ id: 'lowest-spot', rule: 'spot-minimum', kind: 'field', example: 'steel-plates' },
	{ id: 'highest-spot', rule: 'spot-maximum', kind: 'field', example: 'aluminium-brackets' },
	{
		id: 'close-to-it',
		rule: 'spot-minimum',
		kind: 'reason',
		question: {
			en: 'A spot reads a hair above the lowest that passes. What do you write?',
			es: 'Un sitio lee apenas por encima del mínimo que pasa. ¿Qué anota?'
		},
		options: {
			pass: {
				en: 'Passed: above is above.',
				es: 'Pasa: arriba es arriba.'
			},
			again: {
				en: 'Nothing yet: clean the probe, check the zero and the foils, take three new readings.',
				es: 'Todavía nada: limpio la sonda, reviso el cero y las láminas, y tomo tres lecturas nuevas.'
			},
			next: {
				en: 'The better spot beside it, because this one may be an odd place.',
				es: 'El sitio mejor de al lado, porque este puede ser un lugar raro.'
			}
		},
		right: 'again',
		because: {
			en: 'The gauge itself is off by a little, and on a thin film that little is a lot. A number so near the limit could lie on either side. A better spot elsewhere says nothing about this one.',
			es: 'El propio medidor se desvía un poco, y en una película delgada ese poco es mucho. Un número tan cerca del límite puede estar de un lado o del otro. Un sitio mejor en otra parte no dice nada de este.'
		}
	},
	{ id: 'verdict', rule: 'film-readings-judged', kind: 'field', example: 'witness-readings' },
	{
		id: 'odd-one',
		rule: 'film-readings-judged',
		kind: 'reason',
		question: {
			en: 'Four spots are fine. The fifth, in a corner, is far too thin. Somebody says: “Take a sixth spot and drop that one.” Why not?',
			es: 'Cuatro sitios están bien. El quinto, en una esquina, está muy delgado. Alguien dice: «Tome un sexto sitio y quite ese». ¿Por qué no?'
		},
		options: {
			five: {
				en: 'Because the plan allows five spots at most.',
				es: 'Porque el plan permite cinco sitios como máximo.'
			},
			mean: {
				en: 'Because the mean would then come out too high.',
				es: 'Porque entonces el promedio saldría demasiado alto.'
			},
			real: {
				en: 'Because the corner is really bare: the part rusts there, whatever the mean says.',
				es: 'Porque la esquina está desnuda de verdad: ahí se oxida la pieza, diga lo que diga el promedio.'
			}
		},
		right: 'real',
		because: {
			en: 'Readings are there to find the bad place, not to hide it. You may measure the same spot again if the probe was dirty or tilted. You may not trade it for another.',
			es: 'Las lecturas sirven para encontrar el lugar malo, no para esconderlo. Puede medir otra vez el mismo sitio si la sonda estaba sucia o inclinada. No puede cambiarlo por otro.'
		}
	}
] satisfies readonly LessonCheck[];

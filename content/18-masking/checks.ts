import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'masks', rule: 'fit-faces-masked', kind: 'field', example: 'castings' },
	{ id: 'not-on-the-list', rule: 'fit-faces-masked', kind: 'field', example: 'aluminium-brackets' },
	{
		id: 'one-too-many',
		rule: 'fit-faces-masked',
		kind: 'reason',
		question: {
			en: 'A flat outer face got a mask too, "to be safe". What is wrong with that?',
			es: 'Una cara plana exterior también se tapó, «por si acaso». ¿Qué tiene de malo?'
		},
		options: {
			bare: {
				en: 'it comes out bare, and it rusts',
				es: 'sale sin película y se oxida'
			},
			tape: { en: 'only the cost of the tape', es: 'solo lo que cuesta la cinta' },
			heat: { en: 'the face gets too hot under the tape', es: 'la cara se calienta de más bajo la cinta' }
		},
		right: 'bare',
		because: {
			en: 'A mask keeps the film off. Where nothing has to fit, the metal needs that film. A mask too many is a fault like a mask too few.',
			es: 'La máscara deja la cara sin película. Donde nada tiene que encajar, el metal la necesita. Una máscara de más es una falla igual que una de menos.'
		}
	},
	{ id: 'tape', rule: 'tape-stands-the-oven', kind: 'field', example: 'steel-plates' },
	{
		id: 'colour-of-the-roll',
		rule: 'tape-stands-the-oven',
		kind: 'reason',
		question: {
			en: 'A roll of green tape lies on the bench, its core is torn out. The last green roll stood this oven. May you use it?',
			es: 'En el banco hay un rollo de cinta verde sin centro. El rollo verde anterior aguantó este horno. ¿Se puede usar?'
		},
		options: {
			colour: { en: 'yes, green tape is oven tape', es: 'sí, la cinta verde es para horno' },
			double: { en: 'yes, in two layers', es: 'sí, en dos capas' },
			no: {
				en: 'no: nothing says what this roll stands',
				es: 'no: nada dice cuánto aguanta este rollo'
			}
		},
		right: 'no',
		because: {
			en: 'Makers use colours as they like, and two layers of weak glue let go like one. Take a roll that says what it stands.',
			es: 'Cada fabricante usa los colores a su gusto, y dos capas de un pegamento débil se sueltan como una. Tome un rollo que diga cuánto aguanta.'
		}
	}
] as const satisfies readonly LessonCheck[];

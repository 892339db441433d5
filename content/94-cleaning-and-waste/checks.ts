import type { LessonCheck } from '$lib/lessons';

export default [
	{
		id: 'spray-out',
		rule: 'booth-air-speed',
		kind: 'reason',
		question: {
			en: 'Why is the gun not sprayed out with thinner beside the bench, "only for a second"?',
			es: '¿Por qué no se rocía diluyente con la pistola junto al banco, «solo un segundo»?'
		},
		options: {
			waste: { en: 'because thinner costs money', es: 'porque el diluyente cuesta dinero' },
			needle: { en: 'because the needle wears out', es: 'porque la aguja se gasta' },
			mist: {
				en: 'because the mist burns and is breathed, and only the booth carries it off',
				es: 'porque la neblina arde y se respira, y solo la cabina se la lleva'
			}
		},
		right: 'mist',
		because: {
			en: 'A fine mist of solvent takes fire more easily than the liquid. Outside the booth nothing draws it away from you or from a spark.',
			es: 'Una neblina fina de solvente se prende más fácil que el líquido. Fuera de la cabina nada la aleja de usted ni de una chispa.'
		}
	},
	{ id: 'rags', rule: 'rags-in-metal-can', kind: 'field', example: 'steel-plates' },
	{ id: 'left-over', rule: 'left-over-reacts-in-open-pan', kind: 'field', example: 'left-over-mix' },
	{
		id: 'left-open',
		rule: 'rags-in-metal-can',
		kind: 'reason',
		question: {
			en: 'Spent solvent and wet rags could stand open until they are dry. Why is that forbidden here?',
			es: 'El solvente usado y los trapos mojados podrían quedarse abiertos hasta secarse. ¿Por qué aquí está prohibido?'
		},
		options: {
			time: { en: 'because it takes too long', es: 'porque tarda mucho' },
			air: {
				en: 'because all of it goes into the air, where it is breathed and can burn',
				es: 'porque todo pasa al aire, donde se respira y puede arder'
			},
			stain: { en: 'because it leaves stains on the floor', es: 'porque deja manchas en el piso' }
		},
		right: 'air',
		because: {
			en: 'Dry means that the solvent is in the air now. It did not go away, and what stays in the rags may still heat itself.',
			es: 'Seco quiere decir que el solvente ya está en el aire. No desapareció, y lo que queda en los trapos todavía puede calentarse solo.'
		}
	}
] as const satisfies readonly LessonCheck[];

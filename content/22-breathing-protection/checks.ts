import type { LessonCheck } from '$lib/lessons';

export default [
	{
		id: 'cartridges',
		rule: 'breathing-while-mixing',
		kind: 'reason',
		question: {
			en: 'When do the vapour cartridges of the half mask at the mixing bench get changed?',
			es: '¿Cuándo se cambian los cartuchos para vapor de la media cara en el banco de mezcla?'
		},
		options: {
			smell: { en: 'when you begin to smell solvent', es: 'cuando empieza a oler a solvente' },
			plan: {
				en: 'on the day or hour that the written plan names',
				es: 'el día o la hora que dice el plan escrito'
			},
			hard: { en: 'when breathing gets hard', es: 'cuando cuesta respirar' }
		},
		right: 'plan',
		because: {
			en: 'Isocyanate has no smell at the strength that harms, and a nose gets used to solvent. Hard breathing tells of dust, not of vapour that goes through.',
			es: 'A la concentración que daña, el isocianato no huele, y la nariz se acostumbra al solvente. Si cuesta respirar es por polvo, no por vapor que ya pasa.'
		}
	},
	{ id: 'isocyanate', rule: 'air-fed-for-isocyanate', kind: 'field', example: 'steel-plates' },
	{ id: 'solvent-mist', rule: 'breathing-for-solvent-mist', kind: 'field', example: 'bearded-sprayer' },
	{ id: 'spraying-gear', rule: 'gear-for-spraying', kind: 'field', example: 'steel-plates' },
	{ id: 'may-spray', rule: 'may-wear-it', kind: 'field', example: 'bearded-sprayer' },
	{ id: 'wait', rule: 'mask-on-until-clear', kind: 'field', example: 'steel-plates' }
] as const satisfies readonly LessonCheck[];

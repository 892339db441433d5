import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'flash-window', rule: 'flash-time', kind: 'field', example: 'steel-plates' },
	{
		id: 'flash-cut',
		rule: 'flash-time',
		kind: 'reason',
		question: {
			en: 'The job is late and the flash-off was cut to a few minutes. What comes out of the oven, and where do you look?',
			es: 'El trabajo va tarde y la evaporación se recortó a unos minutos. ¿Qué sale del horno y dónde se mira?'
		},
		options: {
			thin: {
				en: 'A thin film on the edges.',
				es: 'Una película delgada en los bordes.'
			},
			dust: {
				en: 'More dust nibs, on the faces that lay up.',
				es: 'Más granos de polvo, en las caras que quedaron hacia arriba.'
			},
			pop: {
				en: 'Tiny burst blisters, where the film is thickest, and more vapour in the oven than it was meant to have.',
				es: 'Ampollitas reventadas donde la película es más gruesa, y más vapor en el horno del previsto.'
			}
		},
		right: 'pop',
		because: {
			en: 'The skin closed while solvent was still below; it boiled through. All that solvent became vapour inside the oven, so the short cut is a safety matter too.',
			es: 'La piel se cerró con solvente debajo y este la atravesó hirviendo. Todo ese solvente se volvió vapor dentro del horno: el atajo también es asunto de seguridad.'
		}
	},
	{ id: 'load', rule: 'oven-solvent-load', kind: 'field', example: 'steel-plates' },
	{ id: 'start', rule: 'purge-before-heat', kind: 'field', example: 'steel-plates' },
	{ id: 'shared-rack', rule: 'unlike-parts-split', kind: 'field', example: 'mixed-rack' },
	{ id: 'probes', rule: 'probe-heaviest-and-thinnest', kind: 'field', example: 'steel-plates' }
] satisfies readonly LessonCheck[];

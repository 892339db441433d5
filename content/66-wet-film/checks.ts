import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'wet-film', rule: 'wet-film-for-dry-film', kind: 'field', example: 'steel-plates' },
	{
		id: 'thinned',
		rule: 'wet-film-for-dry-film',
		kind: 'reason',
		question: {
			en: 'The same can, now with thinner. You lay the same wet film as before. What does the gauge read after the oven?',
			es: 'La misma lata, ahora con diluyente. Deja la misma película húmeda que antes. ¿Qué marca el medidor después del horno?'
		},
		options: {
			same: {
				en: 'The same, because the same wet film lay there.',
				es: 'Lo mismo, porque quedó la misma película húmeda.'
			},
			more: {
				en: 'More, because thinned paint flows together better.',
				es: 'Más, porque la pintura diluida se junta mejor.'
			},
			less: {
				en: 'Less, because part of the wet film was thinner that has left.',
				es: 'Menos, porque parte de la película húmeda era diluyente que ya se fue.'
			}
		},
		right: 'less',
		because: {
			en: 'Only solids stay, and thinner brings none. Each bit of thinner in the wet film is missing from the dry one. So thinned paint must lie thicker wet.',
			es: 'Solo se quedan los sólidos, y el diluyente no trae ninguno. Lo que en la húmeda es diluyente falta en la seca. Por eso la pintura diluida debe quedar más gruesa en húmedo.'
		}
	},
	{ id: 'coats', rule: 'number-of-coats', kind: 'field', example: 'steel-plates' },
	{
		id: 'comb',
		rule: 'wet-film-for-dry-film',
		kind: 'reason',
		question: {
			en: 'The comb shows just the wet film that was worked out. May the lot be released on that?',
			es: 'El peine muestra justo la película húmeda calculada. ¿Con eso se puede liberar el lote?'
		},
		options: {
			yes: {
				en: 'Yes, wet film times solids is the dry film.',
				es: 'Sí, película húmeda por sólidos es la película seca.'
			},
			no: {
				en: 'No. The comb is coarse and solvent was leaving; the gauge after the oven decides.',
				es: 'No. El peine es poco fino y el solvente se estaba yendo; decide el medidor después del horno.'
			},
			twice: {
				en: 'Yes, if a second person reads the comb as well.',
				es: 'Sí, si otra persona también lee el peine.'
			}
		},
		right: 'no',
		because: {
			en: 'The comb tells you while you can still act. Its steps are wide for a thin film, and it reads one spot at one moment. Dry film is measured, not reckoned.',
			es: 'El peine avisa cuando aún se puede corregir. Sus pasos son grandes para una película delgada y lee un sitio en un momento. La película seca se mide, no se calcula.'
		}
	}
] satisfies readonly LessonCheck[];

import { fieldsOf } from '../field';

const { quantity, choice } = fieldsOf({ station: 'inspection', competency: 'inspection' });

export const inspectionFields = {
	gauge: choice(
		{
			magnetic: {
				en: 'magnetic gauge, zeroed on this bare prepared steel',
				es: 'medidor magnético, en cero sobre este acero preparado'
			},
			eddy: {
				en: 'eddy-current gauge, zeroed on this bare prepared metal',
				es: 'medidor por corrientes de Foucault, en cero sobre este metal preparado'
			},
			'eddy-on-anodised': {
				en: 'eddy-current gauge, zeroed on the same anodised piece',
				es: 'medidor por corrientes de Foucault, en cero sobre la misma pieza anodizada'
			},
			'foil-mass': {
				en: 'no gauge reads it here: mass gain on a foil or witness panel',
				es: 'aquí ningún medidor lo lee: aumento de masa en lámina o panel testigo'
			}
		},
		'What reads the dry film on these parts?',
		'¿Con qué se lee la película seca en estas piezas?'
	),
	'spot-minimum': quantity(
		'length',
		'Lowest spot reading that still passes',
		'Lectura mínima de un sitio que aún pasa'
	),
	'spot-maximum': quantity(
		'length',
		'Highest spot reading that still passes',
		'Lectura máxima de un sitio que aún pasa'
	),
	'film-verdict': choice(
		{
			accept: { en: 'accept', es: 'aceptar' },
			hold: { en: 'hold', es: 'retener' }
		},
		'The witness readings on the ticket: accept or hold?',
		'Las lecturas del testigo en la orden: ¿aceptar o retener?'
	),
	'adhesion-class': quantity(
		'count',
		'Worst cross-cut class that passes (ISO 2409, 0 is best)',
		'Peor clase de corte cruzado que pasa (ISO 2409, 0 es la mejor)'
	),
	'adhesion-place': choice(
		{
			part: { en: "on the customer's part", es: 'en la pieza del cliente' },
			witness: { en: 'on the witness panel', es: 'en el panel testigo' }
		},
		'Where do you cut the cross-cut?',
		'¿Dónde hace el corte cruzado?'
	),
	rubs: quantity('count', 'Double rubs the film must take', 'Frotes dobles que debe aguantar la película'),
	'failed-witness': choice(
		{
			release: { en: 'release the parts that look good', es: 'liberar las piezas que se ven bien' },
			recheck: { en: 'cut again until one passes', es: 'cortar de nuevo hasta que pase' },
			hold: { en: 'hold the whole oven load', es: 'retener toda la carga del horno' }
		},
		'A witness panel fails. What happens to the load?',
		'Un panel testigo falla. ¿Qué pasa con la carga?'
	),
	'release-by': choice(
		{
			sprayer: { en: 'whoever sprayed it', es: 'quien la aplicó' },
			other: { en: 'someone who did not spray it', es: 'alguien que no la aplicó' }
		},
		'Who releases the job?',
		'¿Quién libera el trabajo?'
	)
} as const;

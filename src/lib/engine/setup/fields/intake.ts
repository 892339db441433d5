import { FEATURES } from '../../job/part';
import { fieldsOf } from '../field';

const { quantity, choice, choices } = fieldsOf({ station: 'intake', competency: 'intake' });

/** What a person may have to ask the customer or the lead before the job can start. */
export const TOPICS = {
	material: { en: 'what the part is made of', es: 'de qué material es la pieza' },
	heat: {
		en: 'the cure is hotter than the part may get',
		es: 'el curado es más caliente de lo que aguanta la pieza'
	},
	disassembly: { en: 'taking fitted items out', es: 'desmontar lo que trae puesto' },
	cavity: { en: 'a closed cavity', es: 'una cavidad cerrada' },
	'old-coating': { en: 'the old coating', es: 'el recubrimiento anterior' },
	plating: { en: 'the plating', es: 'el baño metálico' },
	'film-basis': {
		en: 'whether the film is per side or in total',
		es: 'si la película es por cara o en total'
	},
	'film-window': { en: 'a film outside the data sheet', es: 'una película fuera de la hoja técnica' },
	adhesion: { en: 'whether anything sticks to this plastic', es: 'si algo se adhiere a este plástico' },
	fire: { en: 'dust that burns', es: 'polvo que arde' },
	conflict: { en: 'two limits that cannot both be met', es: 'dos límites que no se pueden cumplir a la vez' }
} as const;
export type Topic = keyof typeof TOPICS;

export const intakeFields = {
	decision: choice(
		{
			accept: { en: 'accept the job as it stands', es: 'aceptar el trabajo como viene' },
			ask: { en: 'ask before starting', es: 'preguntar antes de empezar' },
			refuse: { en: 'refuse the job', es: 'rechazar el trabajo' }
		},
		'What do you do with this ticket?',
		'¿Qué hace con esta orden?'
	),
	'ask-about': choices(
		TOPICS,
		'What is there to ask or to refuse? (nothing: leave empty)',
		'¿Qué hay que preguntar o rechazar? (nada: deje vacío)'
	),
	'part-cap': quantity(
		'temperature',
		'Highest temperature any spot of these parts may reach',
		'Temperatura máxima que puede alcanzar cualquier zona de estas piezas'
	),
	'mask-features': choices(FEATURES, 'Which faces stay bare?', '¿Qué caras quedan sin recubrir?'),
	'mask-tape': choice(
		{
			paper: { en: 'paper tape', es: 'cinta de papel' },
			polyester: { en: 'polyester tape', es: 'cinta de poliéster' },
			polyimide: { en: 'polyimide tape', es: 'cinta de poliimida' }
		},
		'Which tape goes through the oven?',
		'¿Qué cinta entra al horno?'
	),
	'diameter-growth': quantity(
		'length',
		'How much does the film add to an outside diameter, at most?',
		'¿Cuánto aumenta la película un diámetro exterior, como máximo?'
	)
} as const;

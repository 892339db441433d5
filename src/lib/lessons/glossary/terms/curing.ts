import type { Term } from '../term';

export const curingTerms = [
	{
		id: 'flash-off',
		term: { en: 'flash-off', es: 'evaporación previa' },
		meaning: {
			en: 'The wait after spraying in which solvent leaves the film before heat closes it.',
			es: 'La espera después de aplicar en que el solvente sale antes de que el calor cierre la película.'
		},
		lesson: 'loading-the-oven'
	},
	{
		id: 'cure',
		term: { en: 'cure', es: 'curado' },
		meaning: {
			en: 'The change of the film from soft to hard for good, in the oven by heat and time.',
			es: 'El paso de la película de blanda a dura para siempre; en el horno, con calor y tiempo.'
		},
		lesson: 'soak'
	},
	{
		id: 'part-temperature',
		term: { en: 'part temperature', es: 'temperatura de pieza' },
		meaning: {
			en: 'The temperature of the metal itself. The oven display only shows the air.',
			es: 'La temperatura del metal mismo. La pantalla del horno solo muestra el aire.'
		},
		lesson: 'soak'
	},
	{
		id: 'soak',
		term: { en: 'soak', es: 'tiempo de horneado' },
		meaning: {
			en: 'The time the part itself stays at cure temperature. Heating up does not count.',
			es: 'El tiempo que la pieza misma está a temperatura de curado. Calentar no cuenta.'
		},
		lesson: 'soak'
	},
	{
		id: 'heat-up',
		term: { en: 'heat-up', es: 'calentamiento' },
		meaning: {
			en: 'The time until the slowest part has reached cure temperature.',
			es: 'El tiempo hasta que la pieza más lenta llega a la temperatura de curado.'
		},
		lesson: 'soak'
	},
	{
		id: 'thermocouple',
		term: { en: 'thermocouple', es: 'termopar' },
		meaning: {
			en: 'A wire probe that reads the temperature where it touches.',
			es: 'Sonda de alambre que lee la temperatura donde toca.'
		},
		lesson: 'loading-the-oven'
	},
	{
		id: 'oven-chart',
		term: { en: 'oven chart', es: 'registro del horno' },
		meaning: {
			en: 'The line of temperature over time that a probe leaves behind.',
			es: 'La línea de temperatura contra tiempo que deja un termopar.'
		},
		lesson: 'soak'
	},
	{
		id: 'purge',
		term: { en: 'purge', es: 'purga del horno' },
		meaning: {
			en: 'Running the oven fan before heating, so that vapour left inside is blown out.',
			es: 'Correr el ventilador del horno antes de calentar, para sacar el vapor que quedó.'
		},
		lesson: 'loading-the-oven'
	},
	{
		id: 'explosive-limit',
		term: { en: 'lower explosive limit', es: 'límite inferior de explosividad' },
		meaning: {
			en: 'The least vapour in air that can burn. An oven must stay far below it.',
			es: 'El mínimo de vapor en el aire que puede arder. Un horno debe quedar muy por debajo.'
		},
		lesson: 'loading-the-oven'
	},
	{
		id: 'fume',
		term: { en: 'fume', es: 'humo de descomposición' },
		meaning: {
			en: 'What a film gives off when it gets too hot. It can harm the lungs.',
			es: 'Lo que suelta una película demasiado caliente. Puede dañar los pulmones.'
		},
		lesson: 'soak'
	},
	{
		id: 'recoat-window',
		term: { en: 'recoat window', es: 'ventana para otra mano' },
		meaning: {
			en: 'From when to when another coat may go on and still knit with the last.',
			es: 'De cuándo a cuándo se puede dar otra mano y que se una con la anterior.'
		},
		lesson: 'second-coat'
	},
	{
		id: 'tack-free',
		term: { en: 'tack-free', es: 'seco al tacto' },
		meaning: {
			en: 'Dry enough that a light touch leaves nothing on the finger. It is not yet cured.',
			es: 'Tan seco que un toque ligero no deja nada en el dedo. Todavía no está curado.'
		},
		lesson: 'second-coat'
	}
] as const satisfies readonly Term[];

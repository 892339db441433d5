import type { Term } from '../term';

export const preparationTerms = [
	{
		id: 'surface-preparation',
		term: { en: 'surface preparation', es: 'preparación de superficie' },
		meaning: {
			en: 'Everything done to a part so that a coating can hold to it.',
			es: 'Todo lo que se le hace a una pieza para que el recubrimiento agarre.'
		},
		lesson: 'degreasing'
	},
	{
		id: 'degreasing',
		term: { en: 'degreasing', es: 'desengrase' },
		meaning: {
			en: 'Taking oil, wax and finger grease off the part with a cleaner that suits it.',
			es: 'Quitar aceite, cera y grasa de dedos con un limpiador adecuado para la pieza.'
		},
		lesson: 'degreasing'
	},
	{
		id: 'water-break',
		term: { en: 'water-break check', es: 'prueba de película de agua' },
		meaning: {
			en: 'Watching whether a sheet of clean water stays whole on the part. Where it breaks, oil is left.',
			es: 'Ver si una película de agua limpia queda entera sobre la pieza. Donde se rompe, queda aceite.'
		},
		lesson: 'degreasing'
	},
	{
		id: 'residue',
		term: { en: 'residue', es: 'residuo' },
		meaning: {
			en: 'What stays on the part after cleaning: oil, soap, dust or salt.',
			es: 'Lo que queda en la pieza después de limpiar: aceite, jabón, polvo o sal.'
		},
		lesson: 'degreasing'
	},
	{
		id: 'mask',
		term: { en: 'mask', es: 'máscara' },
		meaning: {
			en: 'Tape, plug or cap that keeps blast and coating off a face.',
			es: 'Cinta, tapón o tapa que protege una cara del granallado y del recubrimiento.'
		},
		lesson: 'masking'
	},
	{
		id: 'blasting',
		term: { en: 'blasting', es: 'granallado' },
		meaning: {
			en: 'Throwing grain at the part with air, to clean it and to give it a profile.',
			es: 'Lanzar grano contra la pieza con aire, para limpiarla y darle perfil.'
		},
		lesson: 'blast-settings'
	},
	{
		id: 'media',
		term: { en: 'media', es: 'abrasivo' },
		meaning: {
			en: 'The grain used for blasting. Each kind suits some materials and harms others.',
			es: 'El grano con que se granalla. Cada tipo sirve para unos materiales y daña otros.'
		},
		lesson: 'blast-settings'
	},
	{
		id: 'grit',
		term: { en: 'grit', es: 'grano anguloso' },
		meaning: {
			en: 'Media with sharp corners. It cuts; round bead only hammers.',
			es: 'Abrasivo con filos. Corta; la perla redonda solo martilla.'
		},
		lesson: 'blast-settings'
	},
	{
		id: 'profile',
		term: { en: 'profile', es: 'perfil' },
		meaning: {
			en: 'The hills and valleys blasting leaves on the surface. The film needs them to hold and must cover them.',
			es: 'Los picos y valles que deja el granallado. La película los necesita para agarrar y los debe cubrir.'
		},
		lesson: 'blast-settings'
	},
	{
		id: 'stand-off',
		term: { en: 'stand-off', es: 'distancia de boquilla' },
		meaning: {
			en: 'How far the blast nozzle is held from the part.',
			es: 'A qué distancia de la pieza se lleva la boquilla de granallado.'
		},
		lesson: 'blast-settings'
	},
	{
		id: 'scuffing',
		term: { en: 'scuffing', es: 'lijado de agarre' },
		meaning: {
			en: 'Dulling a surface by hand with fine paper or pad, where blasting would harm it.',
			es: 'Opacar una superficie a mano con lija o fibra fina, donde granallar la dañaría.'
		},
		lesson: 'blast-settings'
	},
	{
		id: 'key',
		term: { en: 'key', es: 'anclaje' },
		meaning: {
			en: 'The fine roughness a film holds on to.',
			es: 'La aspereza fina de la que se agarra una película.'
		},
		lesson: 'blast-settings'
	},
	{
		id: 'blow-off',
		term: { en: 'blow-off', es: 'sopleteo' },
		meaning: {
			en: 'Clearing dust from a part with low-pressure air. Never at a person.',
			es: 'Quitar el polvo de una pieza con aire a baja presión. Nunca hacia una persona.'
		},
		lesson: 'blasting-safely'
	},
	{
		id: 'rack',
		term: { en: 'rack', es: 'bastidor' },
		meaning: {
			en: 'The frame that carries parts on hooks through spraying and oven.',
			es: 'El marco que lleva las piezas en ganchos por la aplicación y el horno.'
		},
		lesson: 'racking'
	},
	{
		id: 'bake-out',
		term: { en: 'bake-out', es: 'desgasificado' },
		meaning: {
			en: 'Heating a porous part before coating so that oil and gas leave it then, not later.',
			es: 'Calentar una pieza porosa antes de recubrir para que el aceite y el gas salgan entonces y no después.'
		},
		lesson: 'bake-out'
	}
] as const satisfies readonly Term[];

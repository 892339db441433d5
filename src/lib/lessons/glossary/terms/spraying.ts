import type { Term } from '../term';

export const sprayingTerms = [
	{
		id: 'booth',
		term: { en: 'booth', es: 'cabina de aplicación' },
		meaning: {
			en: 'The enclosed place with moving air where spraying is done.',
			es: 'El lugar cerrado con aire en movimiento donde se aplica.'
		},
		lesson: 'fire-and-booth'
	},
	{
		id: 'dew-point',
		term: { en: 'dew point', es: 'punto de rocío' },
		meaning: {
			en: 'The temperature at which water begins to settle out of the air. A colder part gets wet.',
			es: 'La temperatura en la que el agua del aire empieza a condensarse. Una pieza más fría se moja.'
		},
		lesson: 'air-and-dew-point'
	},
	{
		id: 'relative-humidity',
		term: { en: 'relative humidity', es: 'humedad relativa' },
		meaning: {
			en: 'How much water the air holds, of all it could hold at that temperature.',
			es: 'Cuánta agua lleva el aire, de toda la que cabría a esa temperatura.'
		},
		lesson: 'air-and-dew-point'
	},
	{
		id: 'blotter-check',
		term: { en: 'blotter check', es: 'prueba del papel secante' },
		meaning: {
			en: 'White paper held in the air stream. Any stain shows oil or water in the line.',
			es: 'Papel blanco puesto en el chorro de aire. Cualquier mancha delata aceite o agua en la línea.'
		},
		lesson: 'air-and-dew-point'
	},
	{
		id: 'spray-gun',
		term: { en: 'spray gun', es: 'pistola de aplicación' },
		meaning: {
			en: 'The tool that breaks the coating into drops with air.',
			es: 'La herramienta que rompe el recubrimiento en gotas con aire.'
		},
		lesson: 'gun-set-up'
	},
	{
		id: 'air-cap',
		term: { en: 'air cap', es: 'boquilla de aire' },
		meaning: {
			en: 'The front of the gun. Its holes shape the air and with it the fan.',
			es: 'El frente de la pistola. Sus agujeros dan forma al aire y con él al abanico.'
		},
		lesson: 'gun-set-up'
	},
	{
		id: 'cap-pressure',
		term: { en: 'cap pressure', es: 'presión en la boquilla' },
		meaning: {
			en: 'Air pressure measured at the air cap with the trigger pulled, not at the wall.',
			es: 'Presión de aire medida en la boquilla con el gatillo jalado, no en la pared.'
		},
		lesson: 'gun-set-up'
	},
	{
		id: 'hvlp',
		term: { en: 'HVLP', es: 'HVLP (mucho aire, baja presión)' },
		meaning: {
			en: 'A gun that sprays with much air at low pressure, so that less coating is lost.',
			es: 'Pistola que aplica con mucho aire a baja presión, para perder menos recubrimiento.'
		},
		lesson: 'gun-set-up'
	},
	{
		id: 'fan',
		term: { en: 'fan', es: 'abanico' },
		meaning: {
			en: 'The flat shape of the spray.',
			es: 'La forma plana del chorro.'
		},
		lesson: 'gun-set-up'
	},
	{
		id: 'pass',
		term: { en: 'pass', es: 'pasada' },
		meaning: {
			en: 'One stroke of the gun across the part.',
			es: 'Un recorrido de la pistola a lo largo de la pieza.'
		},
		lesson: 'passes'
	},
	{
		id: 'overlap',
		term: { en: 'overlap', es: 'traslape' },
		meaning: {
			en: 'How much of the last pass the next one covers.',
			es: 'Cuánto de la pasada anterior cubre la siguiente.'
		},
		lesson: 'passes'
	},
	{
		id: 'overspray',
		term: { en: 'overspray', es: 'niebla perdida' },
		meaning: {
			en: 'Spray that misses the part, or lands on it half dry.',
			es: 'Lo que no da en la pieza o le llega medio seco.'
		},
		lesson: 'passes'
	},
	{
		id: 'show-face',
		term: { en: 'show face', es: 'cara visible' },
		meaning: {
			en: 'The face of the part that people will look at. It is sprayed last.',
			es: 'La cara de la pieza que la gente va a ver. Se aplica al último.'
		},
		lesson: 'passes'
	},
	{
		id: 'wet-film-thickness',
		term: { en: 'wet film thickness', es: 'espesor húmedo' },
		meaning: {
			en: 'How thick the film is just after spraying, read with a comb.',
			es: 'Qué tan gruesa está la película recién aplicada, leída con peine.'
		},
		lesson: 'wet-film'
	},
	{
		id: 'comb',
		term: { en: 'wet-film comb', es: 'peine de película húmeda' },
		meaning: {
			en: 'A plate with teeth of rising gap. The last wet tooth gives the film.',
			es: 'Placa con dientes a distancia creciente. El último diente mojado da la película.'
		},
		lesson: 'wet-film'
	}
] as const satisfies readonly Term[];

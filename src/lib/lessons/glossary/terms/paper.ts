import type { Term } from '../term';

export const paperTerms = [
	{
		id: 'job-ticket',
		term: { en: 'job ticket', es: 'orden de trabajo' },
		meaning: {
			en: 'The paper that travels with the parts: what they are, what coating they get and what the customer will accept.',
			es: 'El papel que viaja con las piezas: qué son, qué recubrimiento llevan y qué acepta el cliente.'
		},
		lesson: 'ticket-and-sheet'
	},
	{
		id: 'data-sheet',
		term: { en: 'data sheet', es: 'hoja técnica' },
		meaning: {
			en: 'What the maker of a coating says of its use: ratio, thinner, film, waiting times and cure.',
			es: 'Lo que el fabricante del recubrimiento dice de su uso: relación, diluyente, película, esperas y curado.'
		},
		lesson: 'ticket-and-sheet'
	},
	{
		id: 'set-up-sheet',
		term: { en: 'set-up sheet', es: 'hoja de ajuste' },
		meaning: {
			en: 'The sheet on which you write every setting you chose for one job before you begin.',
			es: 'La hoja donde usted anota cada ajuste que eligió para un trabajo antes de empezar.'
		},
		lesson: 'ticket-and-sheet'
	},
	{
		id: 'window',
		term: { en: 'window', es: 'ventana' },
		meaning: {
			en: 'From the lowest to the highest value that is right. Outside it the work is wrong.',
			es: 'Del valor más bajo al más alto que sirve. Fuera de ella el trabajo está mal.'
		},
		lesson: 'ticket-and-sheet'
	},
	{
		id: 'shop-value',
		term: { en: 'shop value', es: 'valor del taller' },
		meaning: {
			en: 'A number that law and data sheet leave open and the shop has decided for itself.',
			es: 'Un número que la ley y la hoja técnica dejan abierto y que el taller decidió.'
		}
	},
	{
		id: 'lot',
		term: { en: 'lot', es: 'lote' },
		meaning: {
			en: 'Cans filled from the same batch; they carry the same number and the same last date of use.',
			es: 'Latas llenadas de la misma preparación; llevan el mismo número y la misma fecha de vencimiento.'
		},
		lesson: 'lot-and-can'
	},
	{
		id: 'load',
		term: { en: 'load', es: 'carga' },
		meaning: {
			en: 'All parts that go into the oven together.',
			es: 'Todas las piezas que entran juntas al horno.'
		},
		lesson: 'loading-the-oven'
	},
	{
		id: 'hold',
		term: { en: 'hold', es: 'retener' },
		meaning: {
			en: 'To tag parts and set them apart so that nobody works on them or ships them until it is decided.',
			es: 'Etiquetar y apartar piezas para que nadie las trabaje ni las envíe hasta que se decida.'
		},
		lesson: 'rework'
	},
	{
		id: 'rework',
		term: { en: 'rework', es: 'retrabajo' },
		meaning: {
			en: 'To bring a part that failed back to what the job asks, by a way somebody has approved.',
			es: 'Llevar una pieza que falló a lo que pide el trabajo, por un camino que alguien aprobó.'
		},
		lesson: 'rework'
	},
	{
		id: 'concession',
		term: { en: 'concession', es: 'concesión' },
		meaning: {
			en: 'The customer’s written yes to a part that is not as ordered.',
			es: 'El sí por escrito del cliente a una pieza que no está como la pidió.'
		},
		lesson: 'rework'
	},
	{
		id: 'scrap',
		term: { en: 'scrap', es: 'desecho' },
		meaning: {
			en: 'A part nobody can or may put right. It is marked so that it never comes back into the work.',
			es: 'Pieza que nadie puede o debe arreglar. Se marca para que nunca vuelva al trabajo.'
		},
		lesson: 'rework'
	},
	{
		id: 'release',
		term: { en: 'release', es: 'liberación' },
		meaning: {
			en: 'The signed decision that parts may leave, taken by somebody who did not spray them.',
			es: 'La decisión firmada de que las piezas pueden salir, tomada por alguien que no las aplicó.'
		},
		lesson: 'release'
	}
] as const satisfies readonly Term[];

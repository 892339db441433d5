import { THINNERS } from '../../coatings/traits';
import { fieldsOf } from '../field';

const { quantity, choice } = fieldsOf({ station: 'mixing', competency: 'mixing' });

export const mixingFields = {
	'lot-action': choice(
		{
			use: { en: 'use this lot', es: 'usar este lote' },
			warm: { en: 'let it reach shop temperature first', es: 'dejar que tome la temperatura del taller' },
			reject: { en: 'set it aside and reject it', es: 'apartarlo y rechazarlo' }
		},
		'What do you do with the lot on the shelf?',
		'¿Qué hace con el lote del estante?'
	),
	'agitate-time': quantity('duration', 'Agitate the can for', 'Agitar la lata durante'),
	'mix-basis': choice(
		{
			volume: { en: 'by volume', es: 'por volumen' },
			weight: { en: 'by weight', es: 'por peso' }
		},
		'On which basis is the sheet’s mix ratio stated?',
		'¿En qué base da la hoja la relación de mezcla?'
	),
	'batch-volume': quantity(
		'volume',
		'Coating to mix for all parts: middle of the wanted film, sheet metal, boxes and rings on both sides, tubes outside only',
		'Recubrimiento que se mezcla para todas las piezas: centro de la película pedida; chapas, cajas y anillos por ambas caras, tubos solo por fuera'
	),
	'hardener-volume': quantity(
		'volume',
		'Hardener to 500 mL of base, by measuring cup',
		'Endurecedor para 500 mL de base, con vaso medidor'
	),
	'hardener-mass': quantity(
		'mass',
		'Hardener to 500 g of base, on the scale',
		'Endurecedor para 500 g de base, en la balanza'
	),
	'stir-time': quantity(
		'duration',
		'Stir after joining the parts for',
		'Agitar después de unir las partes durante'
	),
	'induction-time': quantity(
		'duration',
		'Wait after stirring (induction)',
		'Espera después de agitar (inducción)'
	),
	'use-within': quantity(
		'duration',
		'Latest age of the mix at today’s paint temperature, with the shop’s reserve',
		'Edad máxima de la mezcla a la temperatura de pintura de hoy, con la reserva del taller'
	),
	'thinner-kind': choice(
		{ ...THINNERS, none: { en: 'none', es: 'ninguno' } },
		'If it has to be thinned: with which thinner?',
		'Si hay que diluirlo: ¿con qué diluyente?'
	),
	'thinner-share': quantity(
		'fraction',
		'Most thinner, as a share of the paint volume',
		'Máximo de diluyente, como parte del volumen de pintura'
	),
	strainer: quantity('length', 'Strainer opening', 'Abertura del colador'),
	'cup-time': quantity('duration', 'Flow-cup time ready to spray', 'Tiempo en copa listo para aplicar'),
	'left-over-action': choice(
		{
			use: { en: 'use it up', es: 'aprovecharla' },
			thin: { en: 'thin it and use it', es: 'diluirla y usarla' },
			discard: { en: 'discard it and mix fresh', es: 'desecharla y mezclar de nuevo' }
		},
		'There is left-over mix from earlier. What now?',
		'Hay sobrante de mezcla. ¿Ahora qué?'
	)
} as const;

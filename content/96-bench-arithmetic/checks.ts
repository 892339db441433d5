import type { LessonCheck } from '$lib/lessons';

export default [
	{
		id: 'gauge-in-bar',
		rule: 'blast-pressure',
		kind: 'reason',
		question: {
			en: 'The paper asks for 58 psi. The regulator is marked in bar. Where do you set it?',
			es: 'El papel pide 58 psi. El regulador está marcado en bar. ¿En cuánto lo pone?'
		},
		options: {
			divided: { en: 'About 4 bar: divide by 14.5.', es: 'Cerca de 4 bar: se divide entre 14.5.' },
			tenth: { en: 'About 5.8 bar: a bar is ten psi.', es: 'Cerca de 5.8 bar: un bar son diez psi.' },
			same: {
				en: 'As far as it goes: 58 is more than the scale shows.',
				es: 'Hasta donde llegue: 58 es más de lo que marca la escala.'
			}
		},
		right: 'divided',
		because: {
			en: 'The bar is the big unit, so there are fewer of them: 58 ÷ 14.5 = 4. With ten in place of 14.5 you would blast with almost half as much pressure again.',
			es: 'El bar es la unidad grande, así que son menos: 58 ÷ 14.5 = 4. Con diez en vez de 14.5 se granallaría con casi la mitad más de presión.'
		}
	},
	{
		id: 'percent-of-paint',
		rule: 'thinner-share',
		kind: 'reason',
		question: {
			en: 'The sheet allows 5 % thinner, volume on paint volume. There are 400 mL of paint in the cup. What is the most?',
			es: 'La hoja permite 5 % de diluyente, volumen sobre volumen de pintura. Hay 400 mL de pintura en el vaso. ¿Cuál es el máximo?'
		},
		options: {
			sum: {
				en: '21 mL: five of every hundred in the cup at the end are thinner.',
				es: '21 mL: al final, cinco de cada cien en el vaso son diluyente.'
			},
			paint: {
				en: '20 mL: five for every hundred of paint.',
				es: '20 mL: cinco por cada cien de pintura.'
			},
			figure: {
				en: '5 mL: the sheet says five.',
				es: '5 mL: la hoja dice cinco.'
			}
		},
		right: 'paint',
		because: {
			en: 'On paint volume means that the hundred is the paint: 400 × 0.05 = 20. Of the sum it would be 400 ÷ 0.95 − 400 = 21, which is over the limit.',
			es: 'Sobre volumen de pintura quiere decir que el cien es la pintura: 400 × 0.05 = 20. De la suma serían 400 ÷ 0.95 − 400 = 21, y eso pasa del límite.'
		}
	},
	{ id: 'tubes', rule: 'batch-covers-the-job', kind: 'field', example: 'stainless-tubes' },
	{ id: 'bars', rule: 'batch-covers-the-job', kind: 'field', example: 'brass-levers' },
	{
		id: 'when-to-round',
		rule: 'hardener-by-weight',
		kind: 'reason',
		question: {
			en: 'Converted to weight, the ratio comes to 4.76 to 1. The base in the cup weighs 340 g. When do you round?',
			es: 'Pasada a peso, la relación da 4.76 a 1. La base del vaso pesa 340 g. ¿Cuándo redondea?'
		},
		options: {
			ratio: {
				en: 'At once: 5 to 1 is easier, and the scale is not that fine anyway.',
				es: 'Enseguida: 5 a 1 es más fácil, y la balanza tampoco es tan fina.'
			},
			cup: {
				en: 'Before pouring, to the next line of the measuring cup.',
				es: 'Antes de verter, a la línea más cercana del vaso medidor.'
			},
			end: {
				en: 'At the end: the grams of hardener, to the last digit of the scale.',
				es: 'Al final: los gramos de endurecedor, a la última cifra de la balanza.'
			}
		},
		right: 'end',
		because: {
			en: '340 ÷ 4.76 = 71.4 g. With 5 to 1 it would be 68 g, about 5 % short, and the film may stay soft. Only the last number is rounded, and here it is read off a scale.',
			es: '340 ÷ 4.76 = 71.4 g. Con 5 a 1 serían 68 g, cerca de 5 % de menos, y la película puede quedar blanda. Solo se redondea el último número, y aquí se lee en una balanza.'
		}
	}
] satisfies readonly LessonCheck[];

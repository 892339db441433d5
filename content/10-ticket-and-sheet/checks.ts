import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'clear-job', rule: 'accept-when-clear', kind: 'field', example: 'steel-plates' },
	{
		id: 'twice-the-film',
		rule: 'film-basis-stated',
		kind: 'reason',
		question: {
			en: 'The drawing gives a film for a sliding plate and does not say per side or in total. Why is the lower reading no safe choice either?',
			es: 'El plano da una película para una placa que corre en una guía y no dice por cara ni en total. ¿Por qué tampoco es seguro tomar el valor más bajo?'
		},
		options: {
			thin: {
				en: 'the film may come out at half of what was meant, and wear or rust through',
				es: 'la película puede quedar en la mitad de lo pedido y gastarse o dejar pasar el óxido'
			},
			slow: { en: 'a thin film takes longer to cure', es: 'una película delgada tarda más en curar' },
			gauge: { en: 'no gauge can read a thin film', es: 'ningún medidor lee una película delgada' }
		},
		right: 'thin',
		because: {
			en: 'One reading is half the other. Too thick and the plate jams, too thin and the film wears or rusts through. Only the customer knows which was meant.',
			es: 'Un valor es la mitad del otro. Si queda gruesa, la placa se traba; si queda delgada, se gasta o se oxida. Solo el cliente sabe cuál quería.'
		}
	},
	{ id: 'thick-film', rule: 'film-within-sheet', kind: 'field', example: 'thick-film' },
	{
		id: 'which-gives',
		rule: 'windows-meet',
		kind: 'reason',
		question: {
			en: 'The drawing and the part leave no temperature in common. What do you write to the lead?',
			es: 'El plano y la pieza no dejan ninguna temperatura en común. ¿Qué le escribe al responsable?'
		},
		options: {
			middle: {
				en: 'that you will cure halfway between the two',
				es: 'que va a curar a medio camino entre los dos'
			},
			both: {
				en: 'both limits, where each stands, and which of them may give',
				es: 'los dos límites, en qué papel está cada uno, y cuál de ellos puede ceder'
			},
			part: {
				en: 'that you will keep to the part’s limit and cure longer',
				es: 'que va a respetar el límite de la pieza y curar más tiempo'
			}
		},
		right: 'both',
		because: {
			en: 'Halfway breaks both limits, and more time does not make a cooler cure right. Only the customer or the lead can give one of them up.',
			es: 'A medio camino se incumplen los dos, y más tiempo no vuelve correcto un curado más frío. Solo el cliente o el responsable puede ceder uno.'
		}
	},
	{ id: 'what-to-ask', rule: 'question-named', kind: 'field', example: 'unstated-film' }
] as const satisfies readonly LessonCheck[];

import type { Term } from '../term';

export const mixingTerms = [
	{
		id: 'mix-ratio',
		term: { en: 'mix ratio', es: 'relación de mezcla' },
		meaning: {
			en: 'How much base goes with how much hardener. The basis, weight or volume, belongs to it.',
			es: 'Cuánta base va con cuánto endurecedor. Siempre con su base de medida: peso o volumen.'
		},
		lesson: 'measuring'
	},
	{
		id: 'by-weight',
		term: { en: 'by weight', es: 'en peso' },
		meaning: {
			en: 'Measured on a scale, in grams.',
			es: 'Medido en balanza, en gramos.'
		},
		lesson: 'measuring'
	},
	{
		id: 'by-volume',
		term: { en: 'by volume', es: 'en volumen' },
		meaning: {
			en: 'Measured in a graduated cup, in millilitres.',
			es: 'Medido en un vaso graduado, en mililitros.'
		},
		lesson: 'measuring'
	},
	{
		id: 'density',
		term: { en: 'density', es: 'densidad' },
		meaning: {
			en: 'How heavy one litre of something is. With it volume is turned into weight.',
			es: 'Cuánto pesa un litro de algo. Con ella se pasa de volumen a peso.'
		},
		lesson: 'bench-arithmetic'
	},
	{
		id: 'agitate',
		term: { en: 'agitate', es: 'agitar la lata' },
		meaning: {
			en: 'To stir up a can until nothing is left on its bottom.',
			es: 'Mover el contenido de la lata hasta que no quede nada en el fondo.'
		},
		lesson: 'lot-and-can'
	},
	{
		id: 'induction-time',
		term: { en: 'induction time', es: 'tiempo de inducción' },
		meaning: {
			en: 'The wait after mixing before the mix may be sprayed.',
			es: 'La espera después de mezclar antes de poder aplicar.'
		},
		lesson: 'pot-life'
	},
	{
		id: 'pot-life',
		term: { en: 'pot life', es: 'vida de la mezcla' },
		meaning: {
			en: 'How long a mix can be used. Warmth makes it shorter, and thinner does not bring it back.',
			es: 'Cuánto tiempo sirve una mezcla. El calor la acorta y el diluyente no la recupera.'
		},
		lesson: 'pot-life'
	},
	{
		id: 'viscosity',
		term: { en: 'viscosity', es: 'viscosidad' },
		meaning: {
			en: 'How slowly a liquid flows. Honey has much, water little.',
			es: 'Qué tan despacio fluye un líquido. La miel tiene mucha; el agua, poca.'
		},
		lesson: 'thinning'
	},
	{
		id: 'flow-cup',
		term: { en: 'flow cup', es: 'copa de viscosidad' },
		meaning: {
			en: 'A cup with a hole. The seconds it takes to run empty say how thick the mix is.',
			es: 'Copa con un agujero. Los segundos que tarda en vaciarse dicen qué tan espesa está la mezcla.'
		},
		lesson: 'thinning'
	},
	{
		id: 'strainer',
		term: { en: 'strainer', es: 'colador' },
		meaning: {
			en: 'A cone of mesh that holds back skin and lumps on the way into the gun.',
			es: 'Cono de malla que detiene nata y grumos camino a la pistola.'
		},
		lesson: 'thinning'
	},
	{
		id: 'exotherm',
		term: { en: 'heat of reaction', es: 'calor de reacción' },
		meaning: {
			en: 'The heat base and hardener give off. In a full cup it can smoke and burn.',
			es: 'El calor que sueltan base y endurecedor. En un vaso lleno puede humear y arder.'
		},
		lesson: 'cleaning-and-waste'
	}
] as const satisfies readonly Term[];

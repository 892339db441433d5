import {
	filmFromMass,
	given,
	grams,
	gramsPerMillilitre,
	guardedLimits,
	judgeArea,
	judgeReading,
	micrometres,
	oneNumber,
	percent,
	readingUncertainty,
	spotLimits,
	squareMetres,
	type Text
} from '$lib/engine';
import type { LessonSum } from '$lib/lessons';

const min = given('length', micrometres(20), {
	en: 'Thinnest film wanted, min',
	es: 'Película mínima pedida, min'
});
const max = given('length', micrometres(30), {
	en: 'Thickest film wanted, max',
	es: 'Película máxima pedida, max'
});

const readingsOf = (label: Text, ...read: number[]) =>
	read.map((one) => given('length', micrometres(one), label));
const bare = (readings: ReturnType<typeof readingsOf>) => readings.map(({ value }) => value);

const spots = [
	[26, 27, 25],
	[25, 25, 25],
	[23, 23, 23],
	[28, 28, 28],
	[14, 15, 13]
].map((read, at) => readingsOf({ en: `Spot ${at + 1}`, es: `Sitio ${at + 1}` }, ...read));

const repeated = readingsOf(
	{
		en: 'Readings of one spot, the probe set down anew each time',
		es: 'Lecturas de un sitio, apoyando la sonda de nuevo cada vez'
	},
	...[19.6, 22.4, 20.8, 21.9, 20.3]
);
const uncertain = {
	readings: repeated,
	confidence: given('fraction', percent(95), { en: 'Confidence', es: 'Confianza' })
};

const ZONES = {
	inside: { en: 'Proven inside the window.', es: 'Comprobado: dentro de la ventana.' },
	outside: { en: 'Proven outside the window: hold.', es: 'Comprobado: fuera de la ventana; retener.' },
	'measure-again': {
		en: 'Inside the window, but not proven with this scatter: measure again, or with a better gauge.',
		es: 'Dentro de la ventana, pero no comprobado con esta dispersión: mida otra vez o con un medidor mejor.'
	}
};

export default [
	{
		id: 'weighed-foil',
		asks: {
			en: 'No gauge works on this part, so a foil was weighed before and after. How thick is the film?',
			es: 'En esta pieza no sirve ningún medidor; por eso se pesó una lámina antes y después. ¿Qué espesor tiene la película?'
		},
		work: () =>
			filmFromMass.of({
				gain: given('mass', grams(0.3), { en: 'Weight gained, Δm', es: 'Aumento de peso, Δm' }),
				area: given('area', squareMetres(0.01), { en: 'Area of the foil, A', es: 'Área de la lámina, A' }),
				density: given('density', gramsPerMillilitre(1.5), {
					en: 'Density of the dry film, ρ',
					es: 'Densidad de la película seca, ρ'
				})
			})
	},
	{
		id: 'five-spots',
		asks: {
			en: 'The whole plan was measured on one area. Is it accepted?',
			es: 'Se midió todo el plan en un área. ¿Se acepta?'
		},
		work: () => [
			oneNumber(
				judgeArea,
				{ readings: spots, min, max },
				'length',
				{ en: 'Mean of the spots', es: 'Promedio de los sitios' },
				({ mean }) => mean
			),
			spotLimits.lowest.of({ specified: min }),
			spotLimits.highest.of({ specified: max })
		],
		so: () =>
			judgeArea.at({ readings: spots.map(bare), min: min.value, max: max.value }).accepted
				? {
						en: 'Mean and every spot are inside: accepted.',
						es: 'El promedio y cada sitio están dentro: se acepta.'
					}
				: { en: 'Not every one of them is inside: hold.', es: 'No todo está dentro: retener.' }
	},
	{
		id: 'near-the-limit',
		asks: {
			en: 'The readings of one spot scatter, and their mean lies near the limit. Does that prove the film thick enough?',
			es: 'Las lecturas de un sitio varían y su promedio queda cerca del límite. ¿Eso prueba que la película alcanza?'
		},
		work() {
			const uncertainty = oneNumber(
				readingUncertainty,
				uncertain,
				'length',
				{ en: 'Uncertainty of their mean, U', es: 'Incertidumbre de su promedio, U' },
				({ expanded }) => expanded
			);
			return [
				oneNumber(
					readingUncertainty,
					uncertain,
					'length',
					{ en: 'Mean of the readings', es: 'Promedio de las lecturas' },
					({ mean }) => mean
				),
				oneNumber(
					guardedLimits,
					{ min, max, uncertainty },
					'length',
					{ en: 'Proven thick enough from', es: 'Comprobado que alcanza desde' },
					({ inside }) => inside!.min
				)
			];
		},
		so() {
			const { mean, expanded } = readingUncertainty.at({
				readings: bare(repeated),
				confidence: uncertain.confidence.value
			});
			const { zone } = judgeReading.at({
				measured: mean,
				min: min.value,
				max: max.value,
				uncertainty: expanded
			});
			return ZONES[zone];
		}
	}
] as const satisfies readonly LessonSum[];

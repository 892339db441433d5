/** A count that ends in quarters, as a person says it: `1½`. */
const quarters = (count: number) => {
	const whole = Math.floor(count);
	const rest = ['', '¼', '½', '¾'][Math.round((count - whole) * 4)] ?? '';
	return rest ? `${whole || ''}${rest}` : String(whole);
};

const en = {
	title: 'Instruments',
	now: 'As they stand now.',
	airNow: 'As they stand now. The air on the ticket was read this morning.',
	inWords: 'In words',
	shows: {
		'blast-pressure': 'Cabinet regulator, nozzle open',
		'cap-pressure': 'Test cap, trigger pulled',
		air: 'Air in the booth, thermometer',
		humidity: 'Relative humidity in the booth, hygrometer',
		'cup-time': 'Flow cup, stopwatch',
		spot: 'Thickness gauge, mean of three readings at one spot'
	},
	scale: ({ unit, from, to, numbered, division }: Record<string, string>) =>
		`Dial marked in ${unit}, from ${from} to ${to}. Numbered every ${numbered}; one small division is ${division}.`,
	at: (number: string) => `The pointer is on ${number}.`,
	past: (count: number, number: string) =>
		count < 1
			? `The pointer is ${quarters(count)} of a small division past ${number}.`
			: `The pointer is ${quarters(count)} small ${count === 1 ? 'division' : 'divisions'} past ${number}.`,
	stopwatch:
		'Stopwatch: the long pointer goes round once in 60 seconds. Numbered every 5; one small division is 1 second. The small dial counts minutes.',
	small: (from: number) => `The small pointer is between ${from} and ${from + 1}.`,
	display: (shown: string, unit: string) => `The display shows ${shown}, marked ${unit}.`
};

const es = {
	title: 'Instrumentos',
	now: 'Como están ahora.',
	airNow: 'Como están ahora. El aire de la orden se leyó en la mañana.',
	inWords: 'En palabras',
	shows: {
		'blast-pressure': 'Regulador de la cabina de granallado, boquilla abierta',
		'cap-pressure': 'Boquilla de prueba, gatillo apretado',
		air: 'Aire en la cabina de aplicación, termómetro',
		humidity: 'Humedad relativa en la cabina de aplicación, higrómetro',
		'cup-time': 'Copa de fluidez, cronómetro',
		spot: 'Medidor de espesor, promedio de tres lecturas en un sitio'
	},
	scale: ({ unit, from, to, numbered, division }: Record<string, string>) =>
		`Carátula en ${unit}, de ${from} a ${to}. Con número cada ${numbered}; una división pequeña es ${division}.`,
	at: (number: string) => `La aguja está en ${number}.`,
	past: (count: number, number: string) =>
		count < 1
			? `La aguja está ${quarters(count)} de división pequeña después de ${number}.`
			: `La aguja está ${quarters(count)} ${count === 1 ? 'división pequeña' : 'divisiones pequeñas'} después de ${number}.`,
	stopwatch:
		'Cronómetro: la aguja larga da una vuelta en 60 segundos. Con número cada 5; una división pequeña es 1 segundo. La carátula pequeña cuenta minutos.',
	small: (from: number) => `La aguja pequeña está entre ${from} y ${from + 1}.`,
	display: (shown: string, unit: string) => `La pantalla muestra ${shown}, en ${unit}.`
} satisfies typeof en;

export const gauges = { en, es };

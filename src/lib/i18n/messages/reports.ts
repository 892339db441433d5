import { format } from '../format';

const tickets = (count: number) =>
	`${count} ${format.plural(count, 'en', { one: 'ticket', other: 'tickets' })}`;
const ordenes = (count: number) =>
	`${count} ${format.plural(count, 'es', { one: 'orden', other: 'órdenes' })}`;

const en = {
	title: 'Which rules go wrong',
	intro:
		'What was broken on tickets met for the first time, rule by rule in the order of the work. It shows what to teach next and compares nobody.',
	back: 'Crew board',
	whose: 'Whose work',
	crew: 'The whole crew',
	show: 'Show',
	handedIn: (practice: number, proving: number) =>
		`Handed in: ${tickets(practice)} in practice, ${tickets(proving)} in proving.`,
	practiceCounts:
		'Practice is counted as it was handed in: what was put right after a check or a hint counts as kept. It is no evidence for or against anybody.',
	provingCounts:
		'Proving is counted once the run has its verdict. Drills that were given up or lapsed are left out: they say nothing about a rule.',
	nothing: 'Nothing has been handed in yet.',
	noneBroken: 'Every rule that was asked was kept every time.',
	alwaysKept: (count: number) =>
		count === 1
			? 'One more rule was asked and always kept.'
			: `${count} more rules were asked and always kept.`,
	goneRules: 'Rules this version no longer has',
	rule: 'Rule',
	practice: 'In practice',
	proving: 'In proving',
	wrongOf: (wrong: number, of: number) => `wrong ${wrong} of ${of}`,
	notAsked: 'not asked',

	itemsTitle: 'How well the rules are asked',
	itemsIntro:
		'A rule that hardly anybody keeps, or that is broken by those who keep the others, may be badly asked. Counted over the first attempts of everybody who ever handed one in. Several are by the same person, so even a firm number is a hint and no proof.',
	limits: (least: number, firm: number) =>
		`Below ${least} first attempts no number is shown; below ${firm} it is indicative.`,
	reviewLimits: (hard: string, easy: string, weak: string) =>
		`A rule is looked at again when the share kept is below ${hard} or above ${easy}, or when it goes with the rest by less than ${weak}; below 0 at once.`,
	goesMeans:
		'“Goes with the rest” runs from −1 to 1: above 0 when those who keep this rule keep the others on the same ticket too (item–rest correlation).',
	template: (kind: string, about: string) => `${kind}: ${about}`,
	kinds: { ticket: 'Practice ticket', 'ticket-part': 'Proving drill' },
	wholeTicket: 'several stations',
	from: (count: number, people: number) =>
		`${tickets(count)} by ${people} ${format.plural(people, 'en', { one: 'person', other: 'people' })}`,
	kept: 'Kept',
	goes: 'Goes with the rest',
	look: 'Look at it again',
	tooFew: (n: number, least: number) => `too few to say (${n} of ${least})`,
	keptOf: (kept: number, n: number) => `${kept} of ${n}`,
	indicative: 'indicative',
	noRest: 'cannot be worked out: nothing varies, or too few tickets asked anything else',
	flags: {
		pull: 'At once, and do not rely on it until then: it is broken by those who keep the others.',
		weak: 'It hardly goes with the rest.',
		hard: 'Few keep it: are the lesson and the question clear?',
		easy: 'Nearly everybody keeps it. That may be just as it should be.'
	},
	form: 'The sheet as a whole',
	formOf: (rules: number, n: number) =>
		`The same ${rules} rules were asked together ${n} times; other sheets are left out here.`,
	alpha: (alpha: string) =>
		`Reliability (KR-20): ${alpha}. It says how much of the difference between sheets would show again.`,
	mean: (mean: string, sem: string) =>
		`Rules kept on one sheet: ${mean} on average, with a standard error of measurement of ${sem}.`,
	needed: (count: number, wanted: string) =>
		`For a reliability of ${wanted} one sheet would have to ask ${count} rules like these. No verdict of this tool rests on such a count.`,
	neverEnough: (wanted: string) =>
		`More rules like these would not bring it to ${wanted}. No verdict of this tool rests on such a count.`,
	betterWithout: 'It would be more reliable without:',
	formRefused: {
		'too-few': 'The same rules were not asked together often enough:',
		'not-one-form': 'The sheets asked different rules.',
		'one-item': 'It asked one rule only, so there is nothing to hold together.',
		'no-spread': 'Every sheet kept the same number of rules, so there is nothing to compare.'
	}
};

const es = {
	title: 'Qué reglas salen mal',
	intro:
		'Lo que no se cumplió en órdenes vistas por primera vez, regla por regla en el orden del trabajo. Muestra qué conviene enseñar ahora y no compara a nadie.',
	back: 'Tablero del equipo',
	whose: 'De quién es el trabajo',
	crew: 'Todo el equipo',
	show: 'Mostrar',
	handedIn: (practice: number, proving: number) =>
		`Se entregaron ${ordenes(practice)} en práctica y ${ordenes(proving)} en comprobación.`,
	practiceCounts:
		'La práctica se cuenta como se entregó: lo corregido después de una revisión o una pista cuenta como cumplido. No es evidencia a favor ni en contra de nadie.',
	provingCounts:
		'La comprobación se cuenta cuando la prueba ya tiene veredicto. Los ejercicios abandonados o vencidos no entran: no dicen nada de una regla.',
	nothing: 'Todavía no se ha entregado nada.',
	noneBroken: 'Todas las reglas que se preguntaron se cumplieron siempre.',
	alwaysKept: (count: number) =>
		count === 1
			? 'Otra regla se preguntó y se cumplió siempre.'
			: `Otras ${count} reglas se preguntaron y se cumplieron siempre.`,
	goneRules: 'Reglas que esta versión ya no tiene',
	rule: 'Regla',
	practice: 'En práctica',
	proving: 'En comprobación',
	wrongOf: (wrong: number, of: number) => `mal ${wrong} de ${of}`,
	notAsked: 'no se preguntó',

	itemsTitle: 'Qué tan bien se preguntan las reglas',
	itemsIntro:
		'Una regla que casi nadie cumple, o que incumple quien sí cumple las demás, puede estar mal preguntada. Se cuentan los primeros intentos de todas las personas que alguna vez entregaron uno. Varios son de la misma persona: hasta un número firme es un indicio y no una prueba.',
	limits: (least: number, firm: number) =>
		`Con menos de ${least} primeros intentos no se muestra ningún número; con menos de ${firm} es indicativo.`,
	reviewLimits: (hard: string, easy: string, weak: string) =>
		`Una regla se revisa cuando la parte que la cumple es menor que ${hard} o mayor que ${easy}, o cuando va con el resto menos de ${weak}; por debajo de 0, de inmediato.`,
	goesMeans:
		'«Va con el resto» corre de −1 a 1: está por encima de 0 cuando quien cumple esta regla cumple también las otras de la misma orden (correlación con el resto).',
	template: (kind: string, about: string) => `${kind}: ${about}`,
	kinds: { ticket: 'Orden de práctica', 'ticket-part': 'Ejercicio de comprobación' },
	wholeTicket: 'varias estaciones',
	from: (count: number, people: number) =>
		`${ordenes(count)} de ${people} ${format.plural(people, 'es', { one: 'persona', other: 'personas' })}`,
	kept: 'Cumplida',
	goes: 'Va con el resto',
	look: 'Hay que revisarla',
	tooFew: (n: number, least: number) => `muy pocos para decir algo (${n} de ${least})`,
	keptOf: (kept: number, n: number) => `${kept} de ${n}`,
	indicative: 'indicativo',
	noRest: 'no se puede calcular: nada varía, o muy pocas órdenes preguntaron algo más',
	flags: {
		pull: 'De inmediato, y no se fíe de ella hasta entonces: la incumple quien cumple las demás.',
		weak: 'Casi no va con el resto.',
		hard: 'Pocos la cumplen: ¿están claras la lección y la pregunta?',
		easy: 'Casi todos la cumplen. Puede que así deba ser.'
	},
	form: 'La hoja completa',
	formOf: (rules: number, n: number) =>
		`Las mismas ${rules} reglas se preguntaron juntas ${n} veces; aquí no entran otras hojas.`,
	alpha: (alpha: string) =>
		`Fiabilidad (KR-20): ${alpha}. Dice cuánto de la diferencia entre hojas volvería a verse.`,
	mean: (mean: string, sem: string) =>
		`Reglas cumplidas en una hoja: ${mean} en promedio, con un error estándar de medida de ${sem}.`,
	needed: (count: number, wanted: string) =>
		`Para una fiabilidad de ${wanted}, una hoja tendría que preguntar ${count} reglas como estas. Ningún veredicto de esta herramienta se apoya en ese conteo.`,
	neverEnough: (wanted: string) =>
		`Más reglas como estas no la llevarían a ${wanted}. Ningún veredicto de esta herramienta se apoya en ese conteo.`,
	betterWithout: 'Sería más fiable sin:',
	formRefused: {
		'too-few': 'Las mismas reglas no se preguntaron juntas lo suficiente:',
		'not-one-form': 'Las hojas preguntaron reglas distintas.',
		'one-item': 'Preguntó una sola regla, así que no hay nada que comparar entre sí.',
		'no-spread': 'En todas las hojas se cumplió el mismo número de reglas; no hay nada que comparar.'
	}
} satisfies typeof en;

export const reports = { en, es };

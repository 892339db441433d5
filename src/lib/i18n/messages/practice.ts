const en = {
	title: 'Practice',
	given: 'Filled in for you',
	givenWhy: 'Why',
	read: 'Read: on to a drill of your own',
	workedIntro:
		'Every line is filled in right, with its reason. Read it through; the next one is partly yours. Reading is not entered in the record.',
	check: 'Check this page',
	next: 'On to the next page',
	finish: 'Hand in',
	hintShort: ['Where do I look?', 'What is the rule?', 'Show me how it is worked out'],
	hintWhere: 'The lesson section:',
	hintRule: 'The rule:',
	hintWorked: 'Worked out for this ticket:',
	checkedClear: 'Everything on this page is in its window.',
	checkedFindings: (count: number) =>
		count === 1 ? 'One entry is outside its window.' : `${count} entries are outside their windows.`,
	checkedCount: (count: number) =>
		count === 1
			? 'One line on this page is still wrong. Which one is for you to find.'
			: `${count} lines on this page are still wrong. Which ones is for you to find.`,
	stationOf: (station: string) => `Station: ${station}`
};

const es = {
	title: 'Ejercicios de práctica',
	given: 'Ya lleno',
	givenWhy: 'Por qué',
	read: 'Leído: pasar a un ejercicio propio',
	workedIntro:
		'Cada línea está bien llena, con su razón. Léalo completo; el siguiente lo llena en parte usted. Leer no queda en el registro.',
	check: 'Revisar esta página',
	next: 'Pasar a la siguiente página',
	finish: 'Entregar',
	hintShort: ['¿Dónde busco?', '¿Cuál es la regla?', 'Muéstreme cómo se calcula'],
	hintWhere: 'La sección de la lección:',
	hintRule: 'La regla:',
	hintWorked: 'Resuelto para esta orden:',
	checkedClear: 'Todo en esta página está dentro de su ventana.',
	checkedFindings: (count: number) =>
		count === 1 ? 'Un dato está fuera de su ventana.' : `${count} datos están fuera de sus ventanas.`,
	checkedCount: (count: number) =>
		count === 1
			? 'Una línea de esta página sigue mal. Cuál, lo busca usted.'
			: `${count} líneas de esta página siguen mal. Cuáles, lo busca usted.`,
	stationOf: (station: string) => `Estación: ${station}`
} satisfies typeof en;

/** Words of a practice drill in hand. */
export const practice = { en, es };

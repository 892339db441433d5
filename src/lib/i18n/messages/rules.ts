import { format } from '../format';

const en = {
	title: 'Rules',
	intro:
		'Everything this tool holds to be right for a job is one of these rules. Lessons, drills, findings, the bench card and the search for a cause after a defect all read the same ones.',
	numbersLink: 'Where the numbers come from: shop values, formulas, sources',
	stations: 'Stations',
	authorityOf: (whose: string) => `by ${whose}`,
	all: 'All rules',

	station: 'Station',
	competency: 'Competency',
	severity: 'When broken',
	authority: 'Whose word it is',
	asks: 'What the set-up sheet asks',
	why: 'Why',
	outcome: 'What comes out when it is broken',
	evidence: 'How to find out afterwards',
	lesson: 'The lesson section on this rule',
	source: 'Where the rule comes from',
	expects: 'What it expects in this shop',
	asOn: 'as on',
	moreJobs: (count: number) =>
		`and ${count} more ${format.plural(count, 'en', { one: 'example job', other: 'example jobs' })}`,
	moreExpectations: (count: number) =>
		`${count} further ${format.plural(count, 'en', { one: 'answer', other: 'answers' })} on other example jobs ${format.plural(count, 'en', { one: 'is', other: 'are' })} not listed.`,
	derivation: 'How the numbers came about',
	notCalledFor: 'On the example jobs no data sheet of this shop calls for it, so there is nothing to show.',
	breaks: 'What breaks out',
	direction: { low: 'Too low', high: 'Too high', wrong: 'Otherwise wrong' },
	breaksNone: 'No defect of the film comes from it.',

	numbersTitle: 'Where the numbers come from',
	numbersIntro:
		'A number in this tool is read in a text, taken from a data sheet, set by this shop, worked out by a formula, or remembered by whoever built the tool. Each says which. What nobody has checked against a text says so.',
	authorityTitle: 'Who outranks whom',
	authorityIntro: 'When two limits speak of one thing, the one higher in this list holds.',
	valuesTitle: 'Shop values as they hold today',
	value: 'What',
	holds: 'Holds',
	from: 'Where from',
	formulasTitle: 'Formulas',
	formula: 'Formula',
	valid: 'Works within',
	sourcesTitle: 'Sources',
	publication: 'Publication',
	read: 'What was read of it',
	nothingRead: 'nothing: what is taken from it is from memory',

	checksLink: 'How the formulas were checked',
	checksTitle: 'How the formulas were checked',
	checksIntro:
		'Each computation is held against numbers that somebody else published, or that a well-kept library works out: never against this tool’s own. How far it may be off is said beforehand, with a reason. The table is written by the checks themselves each time they run.',
	checksCount: (facts: number, sources: number) =>
		`${facts} published numbers from ${sources} sources count. Of one table at most five rows count, and of all unit conversions at most twenty.`,
	checksTable: 'Computations and what they were held against',
	computation: 'Computation',
	checkedAgainst: 'Held against',
	factsHead: 'Numbers compared',
	worst: 'Furthest off',
	noCheck:
		'No number from outside yet: it is a definition or plain arithmetic, or its source prints no example.',
	factsFromMemory: (count: number) => `${count} of them quoted from memory`,
	ofAllowed: (share: number) =>
		share === 0
			? 'no difference to speak of'
			: `${format.number(share * 100, 'en', { atMost: 1 })} % of what is allowed`,
	expectedGot: (expected: string, got: string) => `published ${expected}, here ${got}`,
	subjects: {
		units: 'Units of measurement',
		materials: 'Heat properties of materials',
		proving: 'Proving: how sure a verdict is',
		practice: 'Practice: how likely a job comes out right',
		record: 'The record: hashes and canonical text',
		diagnosis: 'Finding a cause: chances and what a test tells'
	},
	uncheckedTitle: 'Shop values that still rest on memory',
	uncheckedIntro:
		'Nobody publishes these, or nobody has looked them up. They are common practice as remembered. The lead confirms or changes each one among the shop values.'
};

const es = {
	title: 'Reglas',
	intro:
		'Todo lo que esta herramienta considera correcto para un trabajo es una de estas reglas. Las lecciones, los ejercicios, los hallazgos, la tarjeta de puesto y la búsqueda de causas después de un defecto leen las mismas.',
	numbersLink: 'De dónde salen los números: valores del taller, fórmulas, fuentes',
	stations: 'Estaciones',
	authorityOf: (whose: string) => `según ${whose}`,
	all: 'Todas las reglas',

	station: 'Estación',
	competency: 'Competencia',
	severity: 'Si no se cumple',
	authority: 'De quién es la palabra',
	asks: 'Qué pregunta la hoja de ajuste',
	why: 'Por qué',
	outcome: 'Qué sale cuando no se cumple',
	evidence: 'Cómo averiguarlo después',
	lesson: 'La sección de la lección sobre esta regla',
	source: 'De dónde viene la regla',
	expects: 'Qué espera en este taller',
	asOn: 'como en',
	moreJobs: (count: number) =>
		`y ${count} ${format.plural(count, 'es', { one: 'trabajo de ejemplo más', other: 'trabajos de ejemplo más' })}`,
	moreExpectations: (count: number) =>
		format.plural(count, 'es', {
			one: 'Hay otra respuesta en otros trabajos de ejemplo que no se muestra.',
			other: `Hay otras ${count} respuestas en otros trabajos de ejemplo que no se muestran.`
		}),
	derivation: 'De dónde salen los números',
	notCalledFor:
		'En los trabajos de ejemplo ninguna hoja técnica de este taller la pide, así que no hay nada que mostrar.',
	breaks: 'Qué defecto aparece',
	direction: { low: 'Por debajo', high: 'Por encima', wrong: 'Mal de otra forma' },
	breaksNone: 'Ningún defecto de la película viene de ella.',

	numbersTitle: 'De dónde salen los números',
	numbersIntro:
		'Un número de esta herramienta se leyó en un texto, viene de una hoja técnica, lo fijó este taller, sale de una fórmula o lo recordó quien hizo la herramienta. Cada uno lo dice. Lo que nadie ha cotejado con un texto también lo dice.',
	authorityTitle: 'Quién manda sobre quién',
	authorityIntro: 'Cuando dos límites hablan de lo mismo, vale el que está más arriba en esta lista.',
	valuesTitle: 'Valores del taller que rigen hoy',
	value: 'Qué',
	holds: 'Rige',
	from: 'De dónde',
	formulasTitle: 'Fórmulas',
	formula: 'Fórmula',
	valid: 'Vale dentro de',
	sourcesTitle: 'Fuentes',
	publication: 'Publicación',
	read: 'Qué se leyó de ella',
	nothingRead: 'nada: lo que se toma de ella es de memoria',

	checksLink: 'Cómo se comprobaron las fórmulas',
	checksTitle: 'Cómo se comprobaron las fórmulas',
	checksIntro:
		'Cada cálculo se compara con números que otros publicaron, o que da una biblioteca bien mantenida: nunca con los de esta misma herramienta. Cuánto puede desviarse se dice de antemano y con su motivo. La tabla la escriben las propias comprobaciones cada vez que corren.',
	checksCount: (facts: number, sources: number) =>
		`Cuentan ${facts} números publicados de ${sources} fuentes. De una misma tabla cuentan cinco filas como máximo, y de todas las conversiones de unidades, veinte.`,
	checksTable: 'Los cálculos y con qué se compararon',
	computation: 'Cálculo',
	checkedAgainst: 'Comparado con',
	factsHead: 'Números comparados',
	worst: 'La mayor diferencia',
	noCheck: 'Aún sin número de fuera: es una definición o simple aritmética, o su fuente no trae un ejemplo.',
	factsFromMemory: (count: number) => `${count} de ellos citados de memoria`,
	ofAllowed: (share: number) =>
		share === 0
			? 'sin diferencia apreciable'
			: `${format.number(share * 100, 'es', { atMost: 1 })} % de lo permitido`,
	expectedGot: (expected: string, got: string) => `publicado ${expected}, aquí ${got}`,
	subjects: {
		units: 'Unidades de medida',
		materials: 'Propiedades térmicas de los materiales',
		proving: 'Prueba sin ayuda: qué tan seguro es un veredicto',
		practice: 'Práctica: qué tan probable es que un trabajo salga bien',
		record: 'El registro: huellas y texto canónico',
		diagnosis: 'Hallar una causa: probabilidades y lo que dice una prueba'
	},
	uncheckedTitle: 'Valores del taller que aún son de memoria',
	uncheckedIntro:
		'Nadie los publica, o nadie los ha buscado. Son práctica común, como se recuerda. La persona responsable confirma o cambia cada uno entre los valores del taller.'
} satisfies typeof en;

export const rules = { en, es };

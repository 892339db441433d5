const en = {
	title: (competency: string, name: string) => `Practical: ${competency}, ${name}`,
	witness: (name: string) => `Entered and watched by ${name}.`,
	about:
		'Prepare and spray the witness panels together, watch every gate yourself and take the readings. Enter raw readings, not only means: the limits beside them come from the data sheet and the shop values.',
	coatingTitle: 'Which coating is on the panels?',
	coatingHelp: 'Its data sheet sets the limits.',
	choose: 'Take this coating',
	otherCoating: 'Another coating',
	noCoatings:
		'No data sheet of this shop states anything to measure in this competency. The lead can add one under Shop.',
	withCoating: (title: string, revision: number) => `Coating: ${title}, data sheet revision ${revision}`,
	when: 'When and with what',
	day: 'Day it was done',
	time: 'Time it ended',
	timeHint: '24-hour clock, such as 14:30',
	panels: 'Panels used',
	panelsHint: 'The stamped numbers, parted by commas, such as W1, W2, W3',
	serial: (line: number) => `Instrument ${line}: serial number`,
	due: (line: number) => `Instrument ${line}: calibration to`,
	gatesTitle: 'Gates you watched',
	gatesHelp: 'All have to be met. A breach at a safety gate stops the practical.',
	gate: (label: string, critical: boolean) => (critical ? `${label} (safety gate)` : label),
	seen: { met: 'met', 'not-met': 'not met', 'not-seen': 'not seen' },
	readingsTitle: 'Readings',
	readingHint: (count: number, unit: string) =>
		[
			count > 1
				? `${count} readings or more, parted by semicolons`
				: 'one reading, more parted by semicolons',
			...(unit ? [`in ${unit} where no unit is typed`] : [])
		].join('; '),
	limits: (limits: string) => `Limits: ${limits}`,
	film: 'Held against the limits: the mean of each spot, and the mean of the spots. A single reading is not.',
	resultTitle: 'Result',
	result: 'Your decision',
	resultOf: { accepted: 'Accepted', refused: 'Not accepted' },
	witnessed: 'I watched this work myself, from the first gate to the last reading.',
	reason: 'Reason for accepting in spite of a reading outside its limits',
	reasonHint: (least: number) => `Only then; ${least} characters or more. It is printed with the record.`,
	note: 'Remark',
	noteHint: 'No names of others and nothing about health: it is kept with the record.',
	enter: 'Enter in the record',
	notEntered: 'Nothing was entered. What you typed is kept below.',
	cannot: 'You cannot enter this practical',
	back: (name: string) => `Back to the record of ${name}`,
	problem: {
		unanswered: 'Choose one.',
		empty: 'Fill this in.',
		'too-few': 'There are too few readings here.',
		'not-a-day': 'Give the day as year-month-day, such as 2026-03-02.',
		'not-a-time': 'Give the time on the 24-hour clock, such as 14:30.',
		'not-an-id': 'Only letters, digits and . _ : / # - , without spaces.',
		'no-instrument': 'Name one instrument or more.'
	}
};

const es = {
	title: (competency: string, name: string) => `Práctica supervisada: ${competency}, ${name}`,
	witness: (name: string) => `La anota y la vio ${name}.`,
	about:
		'Prepare y aplique los paneles testigo junto con la persona, vea usted mismo cada control y tome las lecturas. Anote las lecturas tal como salen, no solo promedios: los límites al lado vienen de la hoja técnica y de los valores del taller.',
	coatingTitle: '¿Qué recubrimiento llevan los paneles?',
	coatingHelp: 'Su hoja técnica da los límites.',
	choose: 'Usar este recubrimiento',
	otherCoating: 'Otro recubrimiento',
	noCoatings:
		'Ninguna hoja técnica de este taller indica algo que medir en esta competencia. El responsable puede agregar una en Taller.',
	withCoating: (title: string, revision: number) =>
		`Recubrimiento: ${title}, hoja técnica revisión ${revision}`,
	when: 'Cuándo y con qué',
	day: 'Día en que se hizo',
	time: 'Hora en que terminó',
	timeHint: 'Reloj de 24 horas, como 14:30',
	panels: 'Paneles usados',
	panelsHint: 'Los números estampados, separados por comas, como W1, W2, W3',
	serial: (line: number) => `Instrumento ${line}: número de serie`,
	due: (line: number) => `Instrumento ${line}: calibración hasta`,
	gatesTitle: 'Controles que usted vio',
	gatesHelp: 'Todos tienen que cumplirse. Una falta en un control de seguridad detiene la práctica.',
	gate: (label: string, critical: boolean) => (critical ? `${label} (control de seguridad)` : label),
	seen: { met: 'cumplido', 'not-met': 'no cumplido', 'not-seen': 'no visto' },
	readingsTitle: 'Lecturas',
	readingHint: (count: number, unit: string) =>
		[
			count > 1
				? `${count} lecturas o más, separadas por punto y coma`
				: 'una lectura; si son más, separadas por punto y coma',
			...(unit ? [`en ${unit} si no se escribe unidad`] : [])
		].join('; '),
	limits: (limits: string) => `Límites: ${limits}`,
	film: 'Se comparan con los límites el promedio de cada sitio y el promedio de los sitios, no cada lectura suelta.',
	resultTitle: 'Resultado',
	result: 'Su decisión',
	resultOf: { accepted: 'Aceptada', refused: 'No aceptada' },
	witnessed: 'Yo mismo vi este trabajo, del primer control a la última lectura.',
	reason: 'Motivo para aceptar a pesar de una lectura fuera de sus límites',
	reasonHint: (least: number) => `Solo en ese caso; ${least} caracteres o más. Se imprime con el registro.`,
	note: 'Observación',
	noteHint: 'Sin nombres de otros y nada sobre la salud: se guarda con el registro.',
	enter: 'Anotar en el registro',
	notEntered: 'No se anotó nada. Lo que escribió sigue abajo.',
	cannot: 'Usted no puede anotar esta práctica',
	back: (name: string) => `Volver al registro de ${name}`,
	problem: {
		unanswered: 'Elija una opción.',
		empty: 'Complete este dato.',
		'too-few': 'Aquí faltan lecturas.',
		'not-a-day': 'Escriba el día como año-mes-día, por ejemplo 2026-03-02.',
		'not-a-time': 'Escriba la hora en el reloj de 24 horas, por ejemplo 14:30.',
		'not-an-id': 'Solo letras, cifras y . _ : / # - , sin espacios.',
		'no-instrument': 'Nombre por lo menos un instrumento.'
	}
} satisfies typeof en;

export const practical = { en, es };

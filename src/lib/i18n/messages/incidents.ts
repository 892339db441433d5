import { format } from '../format';

const en = {
	title: 'Incidents',
	intro:
		'A defect that got out or was found after release. The tool reads its rules backwards into likely causes, each with the test that tells it from the others. A supervisor decides. The tool suspends nobody.',
	report: 'Report a defect',
	none: 'No incident has been reported.',
	list: 'Incidents, the latest first',
	head: { defect: 'Defect', job: 'Job', reported: 'Reported', state: 'Waits for' },
	state: {
		undecided: 'tests and a decision',
		refresher: 'the refresher',
		'to-sign': 'a signature for the refresher',
		'to-close': 'the check that it worked',
		closed: 'nothing: closed'
	},
	toList: 'All incidents',

	whichTitle: 'Which defect is it?',
	whichIntro: 'Choose by the look. The next page says what it is taken for and how to tell them apart.',
	otherDefect: 'It is another defect',
	newTitle: (defect: string) => `Report: ${defect}`,
	look: 'How it looks',
	lookAlike: 'What it is taken for, and the first test',
	now: 'Do this now with the parts',
	jobSection: 'The job',
	job: 'Job number',
	on: 'Day the job ran',
	person: 'Who did the work',
	personHint: 'Facts first: nothing follows for anybody from a report. A decision comes later, on evidence.',
	coating: 'Coating',
	material: 'Material of the parts',
	notKnown: 'not known',
	conditionsSection: 'What was read that day',
	conditionsHint:
		'Fill in what somebody wrote down, with its unit. Leave empty what nobody knows: nothing is guessed from it.',
	writtenSection: 'From the set-up sheet of that job',
	note: 'Anything else that was seen',
	noteHint: 'Where on the parts, how many, when it was noticed. No names.',
	send: 'Enter the report',

	problem: {
		job: 'The number on the job ticket: letters, figures and . _ - / # only, without spaces.',
		on: 'A day that has come, as year-month-day.',
		person: 'Choose who did the work.',
		choice: 'Choose from the list.',
		cannotBe: 'No shop is like that. Check number and unit.',
		empty: 'This cannot be left empty.',
		tooLong: (most: number) => `Too long: at most ${most} characters.`,
		noRule: 'Choose at least one rule.',
		oneCompetency:
			'A refresher proves one competency. Choose rules of one of them; report the other gap separately.',
		noTicket: (rules: string) =>
			`No ticket of this shop can ask for ${rules}, so it could never be proven. Leave it out, or look for a system cause.`,
		oneJob: 'At least one job has to have been looked at.',
		moreThanLookedAt: 'There cannot be more than were looked at.',
		unanswered: 'Choose what the test showed.'
	},
	tampered: 'That form did not come from this page. Nothing was changed.',
	correct: 'Something has to be put right below. Nothing was entered yet.',

	reportSection: 'The report',
	reportedBy: (name: string, at: string) => `Reported by ${name}, ${at}`,
	noneKnown: 'Nothing was written down of how the job ran.',
	known: 'Known of the job',
	defectSection: 'The defect',

	causesTitle: 'Likely causes',
	causesIntro:
		'The best fit to what is known comes first; the order says no more than that. A fit is only given where it holds for every example job that what is known goes with. Work down the list: make the test, enter what it showed.',
	judgedOn: (date: string) => `Limits are those of the data sheets and shop values of ${date}.`,
	direction: { low: 'too low or too short', high: 'too high or too long', wrong: 'not as the rule says' },
	fit: {
		shown: 'shown by its test',
		recorded: 'what was written down breaks the rule',
		unchecked: 'the rule spoke of this job; nothing is written of how it was kept',
		unknown: 'what is known of the job does not decide it',
		kept: 'what was written down keeps the rule; records can be wrong',
		silent: 'the rule has nothing to say of a job like this',
		excluded: 'excluded by its test'
	},
	done: 'Written down',
	expected: 'The rule expects',
	test: 'The test that tells it apart',
	recordTest: 'Enter the result of this test',
	shownLegend: 'What did the test show?',
	shown: {
		low: 'Yes: too low or too short',
		high: 'Yes: too high or too long',
		wrong: 'Yes: not as the rule says',
		kept: 'No: the rule was kept',
		unclear: 'Unclear'
	},
	testNote: 'What exactly was seen or measured',
	enterTest: 'Enter the result',
	results: 'Results so far',
	resultBy: (name: string, at: string) => `${name}, ${at}`,
	noRuleBreaks: 'No rule of this tool leads to this defect.',

	decideTitle: 'Decision',
	decideBefore: [
		'Hear the person first. Ask whether a colleague of the same training would have done the same: if so, it is the way of working.',
		'A slip or a forgotten step calls for a change at the bench, not for more training.',
		'A safety rule is not refreshed here: it is proven at the safety gate on every drill.'
	],
	cannotUndo: 'A decision cannot be taken back. Nobody decides about their own work.',
	evidence: 'The evidence it rests on',
	systemTitle: 'The way of working caused it',
	systemFollows: 'What follows: the action below. No refresher, and nothing changes in what anybody may do.',
	action: 'What will be changed, by whom, by when',
	decideSystem: 'Decide: way of working',
	gapTitle: 'A skill slipped',
	gapFollows: [
		'What follows: whoever did the work finds a refresher on Today, on exactly the rules ticked here.',
		'Their competency shows “refresher due”: supervised work only in it, until the rules are proven again on tickets that hold them and a supervisor signs.',
		'The sign-off itself and its dates stay as they are. Nobody is suspended.'
	],
	rules: (competency: string) => `Rules of ${competency}`,
	rulesShown: (rule: string) => `${rule} (shown by its test)`,
	noGap: 'No cause is left that a refresher could be about.',
	decideGap: 'Decide: skill gap',

	decided: {
		system: 'Decided: the way of working caused it.',
		'skill-gap': 'Decided: a skill slipped.'
	},
	decidedBy: (name: string, at: string) => `Decided by ${name}, ${at}`,
	actionTaken: 'What is changed',
	rulesToProve: 'Rules to prove again',
	toLesson: 'lesson section',
	refresherOf: (person: string, competency: string) => `Refresher of ${person}: ${competency}`,
	refresher: {
		none: 'Not begun. It stands on Today, under Proving it is begun.',
		open: 'Being proven.',
		failed: 'Tried and not proven yet. It can be tried again after some days and the lessons.',
		proven: 'Proven again. It waits for a signature.',
		signed: 'Proven again and signed.'
	},
	signRefresher: 'Sign for the refresher',
	signedBy: (name: string, at: string) => `Signed by ${name}, ${at}`,

	closeTitle: 'Did it work?',
	closeIntro:
		'Look at jobs of the same sort done since. The more of them, the more it says: none in 30 still leaves room for about one in ten.',
	jobsChecked: 'Jobs looked at',
	repeats: 'On how many of them the defect was back',
	closeNote: 'What was looked at',
	close: 'Close the incident',
	closeWaits: 'It can be closed once the refresher is signed.',
	closed: (jobs: number) =>
		`Closed: not back on ${jobs} ${format.plural(jobs, 'en', { one: 'job', other: 'jobs' })} looked at.`,
	closedBy: (name: string, at: string) => `Closed by ${name}, ${at}`
};

const es = {
	title: 'Incidentes',
	intro:
		'Un defecto que salió del taller o apareció después de liberar. La herramienta lee sus reglas al revés y da causas probables, cada una con la prueba que la distingue de las demás. Decide un supervisor. La herramienta no suspende a nadie.',
	report: 'Reportar un defecto',
	none: 'No se ha reportado ningún incidente.',
	list: 'Incidentes, del más reciente al más antiguo',
	head: { defect: 'Defecto', job: 'Trabajo', reported: 'Reportado', state: 'Espera' },
	state: {
		undecided: 'pruebas y una decisión',
		refresher: 'el repaso',
		'to-sign': 'una firma por el repaso',
		'to-close': 'ver si funcionó',
		closed: 'nada: cerrado'
	},
	toList: 'Todos los incidentes',

	whichTitle: '¿Qué defecto es?',
	whichIntro: 'Elija por el aspecto. La página siguiente dice con qué se confunde y cómo distinguirlo.',
	otherDefect: 'Es otro defecto',
	newTitle: (defect: string) => `Reporte: ${defect}`,
	look: 'Cómo se ve',
	lookAlike: 'Con qué se confunde y la primera prueba',
	now: 'Haga esto ahora con las piezas',
	jobSection: 'El trabajo',
	job: 'Número de orden',
	on: 'Día en que se hizo',
	person: 'Quién hizo el trabajo',
	personHint:
		'Primero los hechos: de un reporte no resulta nada para nadie. La decisión viene después, con evidencia.',
	coating: 'Recubrimiento',
	material: 'Material de las piezas',
	notKnown: 'no se sabe',
	conditionsSection: 'Lo que se leyó ese día',
	conditionsHint:
		'Llene lo que alguien anotó, con su unidad. Deje vacío lo que nadie sabe: de eso no se supone nada.',
	writtenSection: 'De la hoja de ajuste de ese trabajo',
	note: 'Otra cosa que se haya visto',
	noteHint: 'En qué parte de las piezas, en cuántas, cuándo se notó. Sin nombres.',
	send: 'Registrar el reporte',

	problem: {
		job: 'El número de la orden: solo letras, cifras y . _ - / #, sin espacios.',
		on: 'Un día que ya llegó, como año-mes-día.',
		person: 'Elija quién hizo el trabajo.',
		choice: 'Elija de la lista.',
		cannotBe: 'Ningún taller está así. Revise el número y la unidad.',
		empty: 'Esto no puede quedar vacío.',
		tooLong: (most: number) => `Demasiado largo: máximo ${most} caracteres.`,
		noRule: 'Elija al menos una regla.',
		oneCompetency:
			'Un repaso demuestra una competencia. Elija reglas de una sola; reporte la otra falta por separado.',
		noTicket: (rules: string) =>
			`Ninguna orden de este taller puede preguntar por ${rules}, así que nunca se podría demostrar. Quítela o busque la causa en la forma de trabajar.`,
		oneJob: 'Hay que haber revisado al menos un trabajo.',
		moreThanLookedAt: 'No pueden ser más que los revisados.',
		unanswered: 'Elija qué mostró la prueba.'
	},
	tampered: 'Ese formulario no salió de esta página. No se cambió nada.',
	correct: 'Hay algo que corregir abajo. Todavía no se registró nada.',

	reportSection: 'El reporte',
	reportedBy: (name: string, at: string) => `Reportado por ${name}, ${at}`,
	noneKnown: 'No se anotó nada de cómo se hizo el trabajo.',
	known: 'Lo que se sabe del trabajo',
	defectSection: 'El defecto',

	causesTitle: 'Causas probables',
	causesIntro:
		'Primero va la que mejor cuadra con lo que se sabe; el orden no dice más que eso. Solo se dice si cuadra donde vale para todos los trabajos de ejemplo compatibles con lo que se sabe. Baje por la lista: haga la prueba y registre qué mostró.',
	judgedOn: (date: string) =>
		`Los límites son los de las hojas técnicas y los valores del taller del ${date}.`,
	direction: {
		low: 'muy bajo o muy corto',
		high: 'muy alto o muy largo',
		wrong: 'no como dice la regla'
	},
	fit: {
		shown: 'demostrada por su prueba',
		recorded: 'lo anotado incumple la regla',
		unchecked: 'la regla valía para este trabajo; no hay nada anotado de si se cumplió',
		unknown: 'lo que se sabe del trabajo no alcanza para decirlo',
		kept: 'lo anotado cumple la regla; lo anotado puede estar mal',
		silent: 'la regla no dice nada de un trabajo como este',
		excluded: 'descartada por su prueba'
	},
	done: 'Anotado',
	expected: 'La regla espera',
	test: 'La prueba que la distingue',
	recordTest: 'Registrar el resultado de esta prueba',
	shownLegend: '¿Qué mostró la prueba?',
	shown: {
		low: 'Sí: muy bajo o muy corto',
		high: 'Sí: muy alto o muy largo',
		wrong: 'Sí: no como dice la regla',
		kept: 'No: la regla se cumplió',
		unclear: 'No quedó claro'
	},
	testNote: 'Qué se vio o se midió exactamente',
	enterTest: 'Registrar el resultado',
	results: 'Resultados hasta ahora',
	resultBy: (name: string, at: string) => `${name}, ${at}`,
	noRuleBreaks: 'Ninguna regla de esta herramienta lleva a este defecto.',

	decideTitle: 'Decisión',
	decideBefore: [
		'Escuche primero a la persona. Pregúntese si un compañero con la misma capacitación habría hecho lo mismo: si es así, es la forma de trabajar.',
		'Un descuido o un paso olvidado pide un cambio en el puesto, no más capacitación.',
		'Una regla de seguridad no se repasa aquí: se demuestra en el filtro de seguridad, en cada ejercicio.'
	],
	cannotUndo: 'Una decisión no se puede retirar. Nadie decide sobre su propio trabajo.',
	evidence: 'La evidencia en que se basa',
	systemTitle: 'La causó la forma de trabajar',
	systemFollows:
		'Qué sigue: la acción de abajo. Sin repaso, y no cambia nada de lo que cada quien puede hacer.',
	action: 'Qué se va a cambiar, quién y para cuándo',
	decideSystem: 'Decidir: forma de trabajar',
	gapTitle: 'Falló una habilidad',
	gapFollows: [
		'Qué sigue: quien hizo el trabajo encuentra un repaso en Hoy, con exactamente las reglas marcadas aquí.',
		'Su competencia muestra «repaso pendiente»: en ella solo trabajo supervisado, hasta que demuestre otra vez las reglas en órdenes que las contengan y un supervisor firme.',
		'La autorización y sus fechas quedan como están. No se suspende a nadie.'
	],
	rules: (competency: string) => `Reglas de ${competency}`,
	rulesShown: (rule: string) => `${rule} (demostrada por su prueba)`,
	noGap: 'No queda ninguna causa de la que pueda tratar un repaso.',
	decideGap: 'Decidir: falta de habilidad',

	decided: {
		system: 'Decidido: la causó la forma de trabajar.',
		'skill-gap': 'Decidido: falló una habilidad.'
	},
	decidedBy: (name: string, at: string) => `Decidido por ${name}, ${at}`,
	actionTaken: 'Qué se cambia',
	rulesToProve: 'Reglas por demostrar otra vez',
	toLesson: 'sección de la lección',
	refresherOf: (person: string, competency: string) => `Repaso de ${person}: ${competency}`,
	refresher: {
		none: 'Sin empezar. Aparece en Hoy; se empieza en Comprobación.',
		open: 'Se está demostrando.',
		failed:
			'Se intentó y aún no se demuestra. Puede intentarse otra vez después de unos días y de las lecciones.',
		proven: 'Demostrado otra vez. Falta la firma.',
		signed: 'Demostrado otra vez y firmado.'
	},
	signRefresher: 'Firmar por el repaso',
	signedBy: (name: string, at: string) => `Firmado por ${name}, ${at}`,

	closeTitle: '¿Funcionó?',
	closeIntro:
		'Revise trabajos del mismo tipo hechos desde entonces. Mientras más sean, más dice: ninguno en 30 todavía deja lugar para cerca de uno en diez.',
	jobsChecked: 'Trabajos revisados',
	repeats: 'En cuántos de ellos volvió el defecto',
	closeNote: 'Qué se revisó',
	close: 'Cerrar el incidente',
	closeWaits: 'Se puede cerrar cuando el repaso esté firmado.',
	closed: (jobs: number) =>
		`Cerrado: no volvió en ${jobs} ${format.plural(jobs, 'es', { one: 'trabajo revisado', other: 'trabajos revisados' })}.`,
	closedBy: (name: string, at: string) => `Cerrado por ${name}, ${at}`
} satisfies typeof en;

export const incidents = { en, es };

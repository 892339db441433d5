const en = {
	title: 'Proving',
	intro:
		'In a proving run you work random job tickets unaided. Each ticket shows the other stations filled in and asks a few fields of one competency and some safety fields.',
	announced: (hours: number) => [
		'A drill is right when every asked field of its competency is in its window and no safety stop occurred. Amber counts as wrong here.',
		'You are not told which drills were right before the verdict. How many drills it takes depends on your answers.',
		'The book is closed while a drill is open: no rules, lessons or practice. Ticket, data sheet and safety data stay.',
		`An open drill waits for you, also when you sign out. Given up, or still open ${hours} hours after issue, it counts as wrong and as a safety miss.`,
		'Between drills you may rest as long as you like. There is no clock.'
	],
	safetyTitle: 'Safety gate',
	safety: {
		open: 'Open: measured on every proving drill.',
		passed: 'Passed.',
		stopped: 'Stopped: do the safety lessons again before you go on.',
		closed: 'Closed: talk to your supervisor about starting over.'
	},
	state: {
		open: 'Not proven yet.',
		passed: 'Proven.',
		undecided: 'The last run ended without a verdict.',
		failed: 'The last run failed. You may try again later, after doing its lessons again.'
	},
	notInTraining: 'A supervisor has not admitted you to training in this competency yet.',
	openRun: (competency: string) => `Begin a run: ${competency}`,
	refresher: (competency: string) => `Prove the refresher: ${competency}`,
	goOn: 'Go on with the run',
	handedIn: (count: number) => (count === 1 ? '1 drill handed in' : `${count} drills handed in`),
	runTitle: (competency: string) => `Proving run: ${competency}`,
	refresherRun: 'This run proves what slipped in an incident.',
	issue: 'Issue the next ticket',
	toDrill: 'Back to the open drill',
	verdict: { passed: 'Verdict: passed', failed: 'Verdict: not passed' },
	means: 'What this shows and what it does not',
	toProving: 'Back to proving',
	resting: 'You can stop here and go on another day.',
	drillTitle: (competency: string) => `Proving drill: ${competency}`,
	givenTitle: 'Filled in for you',
	askedTitle: 'Your part of the set-up sheet',
	toReview: 'Look over before handing in',
	reviewTitle: 'Is this what you want to hand in?',
	reviewHelp: 'Once handed in it cannot be changed. An empty entry counts as wrong.',
	empty: 'nothing entered',
	unreadable: 'cannot be read, go back and correct it',
	handIn: 'Hand in',
	back: 'Back to the entries',
	save: 'Keep and leave it for now',
	kept: 'Your entries are kept.',
	giveUp: 'Give this drill up',
	giveUpSure: 'Yes, it counts as wrong and as a safety miss',
	giveUpTick: 'Tick the box to give up.',
	settled: 'This drill has been handed in or has ended. Its result comes with the verdict.',
	tampered: 'That form did not come from this page. Nothing was changed.',
	noTicket:
		'No ticket of this shop asks for this: the data sheets in force do not call for it. Tell your lead.',
	unreadableStop: 'Some entries cannot be read. Correct them first.'
};

const es = {
	title: 'Comprobación',
	intro:
		'En una prueba usted resuelve sin ayuda órdenes de trabajo al azar. Cada orden muestra las demás estaciones ya llenas y pide unos datos de una competencia y algunos de seguridad.',
	announced: (hours: number) => [
		'Un ejercicio está bien cuando todos los datos pedidos de su competencia están en su ventana y no hubo paro de seguridad. Aquí el ámbar cuenta como mal.',
		'No se le dice cuáles estuvieron bien antes del resultado. Cuántos ejercicios son depende de sus respuestas.',
		'Mientras hay un ejercicio abierto el libro está cerrado: sin reglas, lecciones ni práctica. La orden, la hoja técnica y los datos de seguridad siguen a la vista.',
		`Un ejercicio abierto le espera, aunque cierre sesión. Si lo abandona, o sigue abierto ${hours} horas después de emitirse, cuenta como mal y como falta de seguridad.`,
		'Entre ejercicios puede descansar lo que quiera. No hay reloj.'
	],
	safetyTitle: 'Filtro de seguridad',
	safety: {
		open: 'Abierto: se mide en cada ejercicio de comprobación.',
		passed: 'Superado.',
		stopped: 'Detenido: repita las lecciones de seguridad antes de seguir.',
		closed: 'Cerrado: hable con su supervisor para empezar de nuevo.'
	},
	state: {
		open: 'Todavía sin demostrar.',
		passed: 'Demostrado.',
		undecided: 'La última prueba terminó sin resultado.',
		failed: 'La última prueba no se aprobó. Puede intentarlo más adelante, después de repetir sus lecciones.'
	},
	notInTraining: 'Un supervisor aún no le ha admitido a la capacitación de esta competencia.',
	openRun: (competency: string) => `Empezar una prueba: ${competency}`,
	refresher: (competency: string) => `Demostrar el repaso: ${competency}`,
	goOn: 'Seguir con la prueba',
	handedIn: (count: number) => (count === 1 ? '1 ejercicio entregado' : `${count} ejercicios entregados`),
	runTitle: (competency: string) => `Prueba: ${competency}`,
	refresherRun: 'Esta prueba demuestra lo que falló en un incidente.',
	issue: 'Emitir la siguiente orden',
	toDrill: 'Volver al ejercicio abierto',
	verdict: { passed: 'Resultado: aprobado', failed: 'Resultado: no aprobado' },
	means: 'Qué muestra esto y qué no',
	toProving: 'Volver a comprobación',
	resting: 'Puede parar aquí y seguir otro día.',
	drillTitle: (competency: string) => `Ejercicio de comprobación: ${competency}`,
	givenTitle: 'Ya lleno para usted',
	askedTitle: 'Su parte de la hoja de ajuste',
	toReview: 'Revisar antes de entregar',
	reviewTitle: '¿Esto es lo que quiere entregar?',
	reviewHelp: 'Una vez entregado no se puede cambiar. Un dato vacío cuenta como mal.',
	empty: 'sin dato',
	unreadable: 'no se puede leer, vuelva y corríjalo',
	handIn: 'Entregar',
	back: 'Volver a los datos',
	save: 'Guardar y dejarlo por ahora',
	kept: 'Sus datos quedan guardados.',
	giveUp: 'Abandonar este ejercicio',
	giveUpSure: 'Sí, cuenta como mal y como falta de seguridad',
	giveUpTick: 'Marque la casilla para abandonar.',
	settled: 'Este ejercicio ya se entregó o terminó. Su resultado llega con el de la prueba.',
	tampered: 'Ese formulario no salió de esta página. No se cambió nada.',
	noTicket:
		'Ninguna orden de este taller pide esto: las hojas técnicas vigentes no lo exigen. Avise a su responsable.',
	unreadableStop: 'Hay datos que no se pueden leer. Corríjalos primero.'
} satisfies typeof en;

export const proving = { en, es };

import { format } from '../format';

const en = {
	title: (name: string) => `Record of ${name}`,
	own: 'This is your own record, to read. Others sign it.',
	sheet: 'Printable sign-off sheet',
	safetyTitle: 'Safety gate',
	safetyMeans: 'What the gate shows and what it does not',
	safety: {
		open: (drills: number) =>
			drills === 0
				? 'Open. No proving drill was handed in yet.'
				: `Open, after ${drills} proving ${format.plural(drills, 'en', { one: 'drill', other: 'drills' })}. What was found in them comes with the verdict.`,
		passed: (drills: number, misses: number) =>
			`Passed, after ${drills} proving ${format.plural(drills, 'en', { one: 'drill', other: 'drills' })}, ${misses} with a safety stop.`,
		stopped: (drills: number, misses: number) =>
			`Stopped: ${misses} safety stops in ${drills} proving ${format.plural(drills, 'en', { one: 'drill', other: 'drills' })}. The safety lessons come first.`,
		closed: (drills: number, misses: number) =>
			`Closed: ${misses} safety stops in ${drills} proving ${format.plural(drills, 'en', { one: 'drill', other: 'drills' })}, and no try is left. A lead has to admit this person anew.`
	},
	refresherDue: 'Refresher due: this work is supervised until it is signed.',
	lessons: 'Lessons',
	lessonOn: (day: string) => `done on ${day}`,
	lessonOld: (day: string) => `done on ${day}, before training was started anew: to be done again`,
	lessonOpen: 'to do',
	runs: 'Proving runs',
	noRuns: 'No proving run yet.',
	run: (opened: string) => `Begun ${opened}`,
	purpose: { first: 'first run', retest: 'repeated run', renewal: 'renewal', refresher: 'refresher' },
	drills: (count: number) => `${count} ${format.plural(count, 'en', { one: 'drill', other: 'drills' })}`,
	verdict: {
		passed: (at: string) => `verdict on ${at}: passed`,
		failed: (at: string) => `verdict on ${at}: not passed`
	},
	noVerdict: 'no verdict yet',
	means: 'What this shows and what it does not',
	practicals: 'Practicals',
	noPracticals: 'No practical yet.',
	practicalOf: {
		accepted: (at: string) => `Accepted, taken ${at}`,
		refused: (at: string) => `Refused, taken ${at}`
	},
	watchedBy: (name: string) => `watched by ${name}`,
	late: (at: string) => `Entered more than a day later: ${at}`,
	coating: 'Coating on the panels',
	revision: (number: number) => `data sheet revision ${number}`,
	panelIds: 'Panels',
	instruments: 'Measured with',
	calibrated: (day: string) => `calibration to ${day}`,
	calibrationOver: (day: string) => `calibration was over on ${day}`,
	gates: 'Gates',
	seen: { met: 'met', 'not-met': 'not met', 'not-seen': 'not seen' },
	safetyGate: (label: string) => `${label} (safety gate)`,
	readings: 'Readings',
	reading: 'Reading',
	values: 'As taken',
	limits: 'Limits',
	judged: 'Held against them',
	inside: 'inside',
	outside: 'outside',
	noLimits: 'none',
	acceptedAllTheSame: 'Accepted in spite of a reading outside its limits. Reason:',
	note: 'Remark',
	signOffs: 'Sign-offs',
	noSignOffs: 'Not signed yet.',
	meaning: { approved: 'Approved: fit to work alone in this competency' },
	signedBy: (name: string, at: string) => `Signed by ${name}, ${at}`,
	flag: {
		'non-independent': 'Not independent: the signer declared an interest.',
		'founding-lead': 'Signed by the founding lead, who was not signed for it by anybody else.'
	},
	declared: {
		trained: 'trained this person in it',
		lineManager: 'is their line manager',
		relative: 'is a relative',
		paidByResult: 'is paid by the result'
	},
	declaration: 'Declared',
	watched: 'Watched the proving',
	nobodyWatched: 'nobody',
	overridden: 'Passed over, with this reason:',
	validity: 'Validity',
	valid: (from: string, until: string) => `${from} to ${until}`,
	confirmBy: (day: string) => `continued work to be confirmed by ${day}`,
	reevaluation: (day: string) => `full re-evaluation by ${day}`,
	full: 'All parts were taken anew.',
	notFull: 'Renewal: lessons from before counted.',
	second: (name: string, at: string) => `Second person: ${name}, ${at}`,
	suspended: (name: string, at: string, review: string) =>
		`Suspended by ${name}, ${at}; looked at again by ${review}. Reason:`,
	reinstated: (name: string, at: string) => `Suspension lifted by ${name}, ${at}. Reason:`,
	withdrawn: (name: string, at: string) => `Withdrawn by ${name}, ${at}. Reason:`,
	confirmed: (name: string, at: string) => `Continued work confirmed by ${name}, ${at}, by these jobs:`,
	history: 'History',
	noHistory: 'Nothing happened yet.',
	program: 'the program',
	happened: {
		'training.started': 'training started',
		'proving.opened': 'proving run begun',
		'proving.concluded': 'proving run ended with a verdict',
		'practical.recorded': 'practical entered',
		'signoff.granted': 'signed off',
		'signoff.second-person': 'second person added',
		'signoff.suspended': 'suspended',
		'signoff.reinstated': 'suspension lifted',
		'signoff.withdrawn': 'withdrawn',
		'continuity.confirmed': 'continued work confirmed',
		'incident.decided': 'incident decided: refresher due',
		'refresher.signed': 'refresher signed'
	},
	acts: 'What you may do here',
	toPractical: 'Enter a practical',
	toSignOff: 'Evidence and signature',
	toRefresher: 'Evidence and signature for the refresher',
	toContinuity: 'Confirm continued work',
	start: {
		'start-training': 'Start training',
		recertify: 'Start training again; earlier lessons count',
		'start-over': 'Start training over with all parts',
		'new-application': 'Admit anew after a new application'
	},
	changeTitle: 'Suspend, lift a suspension or withdraw',
	change: {
		suspend: 'Suspend: no work in this competency until it is lifted',
		reinstate: 'Lift the suspension',
		withdraw: 'Withdraw for good: only a new application leads back'
	},
	changeWhat: 'Which act?',
	reason: 'Reason',
	reasonHint: 'Printed with the record. A person can ask to see it.',
	secret: 'Your passphrase, as your signature',
	doChange: 'Enter it in the record',
	secondTitle: 'Sign as second person',
	secondHelp:
		'Look at the evidence first. Your signature stands beside the first one and changes nothing in it.',
	doSecond: 'Sign as second person',
	noAct: 'Choose an act from the list.',
	noReason: 'Give the reason.',
	declarationOpen: 'Answer every question of the declaration.',
	done: {
		practical: 'The practical is in the record.',
		signed: 'Signed. It is in the record.',
		refresher: 'The refresher is signed. It is in the record.',
		continuity: 'The confirmation is in the record.',
		change: 'It is in the record.',
		second: 'Your signature is in the record.',
		start: 'Training is started. It is in the record.'
	}
};

const es = {
	title: (name: string) => `Registro de ${name}`,
	own: 'Este es su propio registro, para leer. Lo firman otros.',
	sheet: 'Hoja de autorización para imprimir',
	safetyTitle: 'Filtro de seguridad',
	safetyMeans: 'Qué muestra el filtro y qué no',
	safety: {
		open: (drills: number) =>
			drills === 0
				? 'Abierto. Todavía no se entregó ningún ejercicio de comprobación.'
				: `Abierto, tras ${drills} ${format.plural(drills, 'es', { one: 'ejercicio', other: 'ejercicios' })} de comprobación. Lo hallado en ellos se ve con el resultado.`,
		passed: (drills: number, misses: number) =>
			`Superado, tras ${drills} ${format.plural(drills, 'es', { one: 'ejercicio', other: 'ejercicios' })} de comprobación, ${misses} con paro de seguridad.`,
		stopped: (drills: number, misses: number) =>
			`Detenido: ${misses} paros de seguridad en ${drills} ${format.plural(drills, 'es', { one: 'ejercicio', other: 'ejercicios' })} de comprobación. Primero van las lecciones de seguridad.`,
		closed: (drills: number, misses: number) =>
			`Cerrado: ${misses} paros de seguridad en ${drills} ${format.plural(drills, 'es', { one: 'ejercicio', other: 'ejercicios' })} de comprobación, y no queda intento. Un responsable tiene que admitir de nuevo a esta persona.`
	},
	refresherDue: 'Repaso pendiente: este trabajo es supervisado hasta que se firme.',
	lessons: 'Lecciones',
	lessonOn: (day: string) => `hecha el ${day}`,
	lessonOld: (day: string) => `hecha el ${day}, antes de empezar otra vez la formación: hay que repetirla`,
	lessonOpen: 'por hacer',
	runs: 'Pruebas',
	noRuns: 'Todavía no hay pruebas.',
	run: (opened: string) => `Empezada el ${opened}`,
	purpose: { first: 'primera prueba', retest: 'prueba repetida', renewal: 'renovación', refresher: 'repaso' },
	drills: (count: number) =>
		`${count} ${format.plural(count, 'es', { one: 'ejercicio', other: 'ejercicios' })}`,
	verdict: {
		passed: (at: string) => `resultado del ${at}: aprobada`,
		failed: (at: string) => `resultado del ${at}: no aprobada`
	},
	noVerdict: 'todavía sin resultado',
	means: 'Qué muestra esto y qué no',
	practicals: 'Prácticas supervisadas',
	noPracticals: 'Todavía no hay práctica supervisada.',
	practicalOf: {
		accepted: (at: string) => `Aceptada, hecha el ${at}`,
		refused: (at: string) => `No aceptada, hecha el ${at}`
	},
	watchedBy: (name: string) => `la vio ${name}`,
	late: (at: string) => `Anotada más de un día después: ${at}`,
	coating: 'Recubrimiento en los paneles',
	revision: (number: number) => `hoja técnica, revisión ${number}`,
	panelIds: 'Paneles',
	instruments: 'Medido con',
	calibrated: (day: string) => `calibración hasta el ${day}`,
	calibrationOver: (day: string) => `la calibración había vencido el ${day}`,
	gates: 'Controles observados',
	seen: { met: 'cumplido', 'not-met': 'no cumplido', 'not-seen': 'no visto' },
	safetyGate: (label: string) => `${label} (control de seguridad)`,
	readings: 'Lecturas',
	reading: 'Lectura',
	values: 'Tal como se tomó',
	limits: 'Límites',
	judged: 'Comparada con ellos',
	inside: 'dentro',
	outside: 'fuera',
	noLimits: 'ninguno',
	acceptedAllTheSame: 'Aceptada a pesar de una lectura fuera de sus límites. Motivo:',
	note: 'Observación',
	signOffs: 'Autorizaciones',
	noSignOffs: 'Todavía sin firma.',
	meaning: { approved: 'Aprobado: apto para trabajar solo en esta competencia' },
	signedBy: (name: string, at: string) => `Firmó ${name}, ${at}`,
	flag: {
		'non-independent': 'No independiente: quien firmó declaró un interés.',
		'founding-lead': 'Firmó el responsable fundador, a quien nadie más había autorizado en ella.'
	},
	declared: {
		trained: 'formó a esta persona en ella',
		lineManager: 'es su jefe directo',
		relative: 'es familiar',
		paidByResult: 'cobra según el resultado'
	},
	declaration: 'Declaró',
	watched: 'Vio la comprobación',
	nobodyWatched: 'nadie',
	overridden: 'Se pasó por alto, con este motivo:',
	validity: 'Vigencia',
	valid: (from: string, until: string) => `del ${from} al ${until}`,
	confirmBy: (day: string) => `confirmar que sigue en el trabajo, a más tardar el ${day}`,
	reevaluation: (day: string) => `evaluación completa, a más tardar el ${day}`,
	full: 'Todas las partes se hicieron de nuevo.',
	notFull: 'Renovación: contaron lecciones anteriores.',
	second: (name: string, at: string) => `Segunda persona: ${name}, ${at}`,
	suspended: (name: string, at: string, review: string) =>
		`La suspendió ${name}, ${at}; se revisa a más tardar el ${review}. Motivo:`,
	reinstated: (name: string, at: string) => `Levantó la suspensión ${name}, ${at}. Motivo:`,
	withdrawn: (name: string, at: string) => `La retiró ${name}, ${at}. Motivo:`,
	confirmed: (name: string, at: string) =>
		`${name} confirmó, ${at}, que sigue en el trabajo, con estos trabajos:`,
	history: 'Historia',
	noHistory: 'Todavía no pasó nada.',
	program: 'el programa',
	happened: {
		'training.started': 'empezó la formación',
		'proving.opened': 'empezó una prueba',
		'proving.concluded': 'una prueba terminó con resultado',
		'practical.recorded': 'se anotó una práctica supervisada',
		'signoff.granted': 'se firmó la autorización',
		'signoff.second-person': 'firmó una segunda persona',
		'signoff.suspended': 'suspendida',
		'signoff.reinstated': 'se levantó la suspensión',
		'signoff.withdrawn': 'retirada',
		'continuity.confirmed': 'se confirmó que sigue en el trabajo',
		'incident.decided': 'incidente decidido: repaso pendiente',
		'refresher.signed': 'se firmó el repaso'
	},
	acts: 'Lo que usted puede hacer aquí',
	toPractical: 'Anotar una práctica supervisada',
	toSignOff: 'Evidencia y firma',
	toRefresher: 'Evidencia y firma del repaso',
	toContinuity: 'Confirmar que sigue en el trabajo',
	start: {
		'start-training': 'Empezar la formación',
		recertify: 'Empezar otra vez la formación; cuentan las lecciones anteriores',
		'start-over': 'Empezar la formación de nuevo con todas las partes',
		'new-application': 'Admitir de nuevo tras una nueva solicitud'
	},
	changeTitle: 'Suspender, levantar una suspensión o retirar',
	change: {
		suspend: 'Suspender: nada de trabajo en esta competencia hasta levantarla',
		reinstate: 'Levantar la suspensión',
		withdraw: 'Retirar para siempre: solo una nueva solicitud permite volver'
	},
	changeWhat: '¿Qué acto?',
	reason: 'Motivo',
	reasonHint: 'Se imprime con el registro. La persona puede pedir verlo.',
	secret: 'Su frase de acceso, como firma',
	doChange: 'Anotarlo en el registro',
	secondTitle: 'Firmar como segunda persona',
	secondHelp: 'Mire primero la evidencia. Su firma queda junto a la primera y no le cambia nada.',
	doSecond: 'Firmar como segunda persona',
	noAct: 'Elija un acto de la lista.',
	noReason: 'Dé el motivo.',
	declarationOpen: 'Conteste todas las preguntas de la declaración.',
	done: {
		practical: 'La práctica supervisada quedó en el registro.',
		signed: 'Firmado. Quedó en el registro.',
		refresher: 'El repaso quedó firmado, en el registro.',
		continuity: 'La confirmación quedó en el registro.',
		change: 'Quedó en el registro.',
		second: 'Su firma quedó en el registro.',
		start: 'La formación empezó. Quedó en el registro.'
	}
} satisfies typeof en;

/** A person's record: evidence, signatures, history, and the acts on them. */
export const person = { en, es };

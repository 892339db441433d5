import { format } from '../format';

const en = {
	title: (competency: string, name: string) => `Sign-off: ${competency}, ${name}`,
	refresherTitle: (competency: string, name: string) => `Refresher signature: ${competency}, ${name}`,
	about: 'Look at the evidence, declare what stands between you and this person, then look over and sign.',
	refresherAbout:
		'You sign that what slipped was proven again on tickets with those rules. The dates of the sign-off do not move.',
	state: (word: string) => `State today: ${word}`,
	against: 'It cannot be signed by you today',
	renewal:
		'It is signed already. Signing again renews it, and rests only on proving and a practical since the last signature.',
	refresherFirst: 'A refresher is due here. Sign that one first.',
	toRefresher: 'To the refresher',
	lessons: 'Lessons',
	missing: 'still to do',
	proving: 'Proving run',
	noRun: 'There is no run with a verdict.',
	log: 'Every drill of the run',
	logHelp: 'Shown because the verdict has fallen. The trainee sees the verdict, not this list.',
	drill: 'Drill',
	when: 'Handed in or ended',
	outcome: 'Outcome',
	rules: 'Rules breached',
	right: 'right',
	wrong: 'wrong',
	givenUp: 'given up: counts as wrong',
	lapsed: 'left open too long: counts as wrong',
	stop: (rule: string) => `Safety stop: ${rule}`,
	none: 'none',
	earlier: 'Earlier runs in this competency',
	safety: 'Safety gate',
	practical: 'Practical',
	noPractical: 'There is no practical that counts.',
	declare: 'Your declaration',
	conflict: {
		trained: 'Did you train this person in this competency?',
		lineManager: 'Are you their line manager?',
		relative: 'Are you related to them?',
		paidByResult: 'Does your pay depend on how this ends?'
	},
	yes: 'Yes',
	no: 'No',
	declareHelp:
		'A yes does not stop you from signing. The signature is then stored and printed as not independent, and a second person can add theirs.',
	watchedBy: 'Who watched while the drills were worked?',
	watchedByHelp: 'Nobody is an honest answer too. It is printed.',
	nobody: 'Nobody watched',
	reason: 'Reason',
	reasonFor: (what: string) => `By signing you pass over this: ${what}. Say why it is right to.`,
	reasonHint: (least: number) => `${least} characters or more. It is printed with the signature.`,
	passedOver: {
		'safety-misses-since-pass': 'safety stops in drills after the safety gate was passed',
		'practical-reading': 'a practical reading outside its limits that was accepted'
	},
	review: 'Look over before signing',
	reviewTitle: 'Is this what you want to sign?',
	meaning: (signer: string, name: string, competency: string) =>
		`I, ${signer}, have looked at the evidence above and approve: ${name} is fit to work alone in this competency: ${competency}.`,
	refresherMeaning: (signer: string, name: string, competency: string) =>
		`I, ${signer}, have looked at the evidence above and approve: ${name} has proven again what slipped in this competency: ${competency}.`,
	declared: 'You declare',
	noInterest: 'none of the four applies',
	nonIndependent: 'This signature will be stored and printed as not independent.',
	foundingLead: 'As founding lead you may sign without being signed for it; that is printed too.',
	watched: 'Watched by',
	secret: 'Your passphrase',
	secretHelp: 'It is your signature: entered for this act alone.',
	sign: 'Sign',
	change: 'Back to the entries',
	signedOn: (day: string) => `The signature is for today, ${day}.`,
	notSigned: 'Nothing was signed.',
	wrongSecret: 'That is not your passphrase. Nothing was signed; the try is in the record.',
	emptySecret: 'Enter your passphrase.',
	evidenceChanged: 'The evidence has changed since you looked. Look at it again, then sign.',
	back: (name: string) => `Back to the record of ${name}`,
	problem: {
		unanswered: 'Answer yes or no.',
		'no-watcher': 'Name who watched, or say that nobody did.',
		'nobody-and-somebody': 'Either somebody watched or nobody did.',
		empty: 'Fill this in.'
	},

	continuityTitle: (competency: string, name: string) => `Continued work: ${competency}, ${name}`,
	continuityAbout:
		'You confirm that this person still does this work, by jobs they did. One job is enough; more say more.',
	continuityPeriod: (from: string, to: string) => `Jobs between ${from} and ${to}`,
	continuityDue: (day: string) => `To be confirmed by ${day}`,
	continuityNext: (day: string) => `Confirmed today, it is next due by ${day}`,
	job: (line: number) => `Job number ${line}`,
	jobDay: (line: number) => `Day of job ${line}`,
	continuityMeaning: 'I confirm that this person did these jobs in this competency.',
	confirm: 'Confirm',
	jobProblem: {
		job: 'A job number has letters, digits and . _ : / # - , without spaces.',
		day: 'Give the day of the job as year-month-day.',
		none: 'Name one job or more.'
	},

	sheetTitle: 'Sign-off sheet',
	sheetOf: (name: string) => `Sign-offs of ${name}`,
	nothing: 'Nothing was ever signed for this person.',
	printHelp: 'Use your browser’s print command; A4 and Letter both work.',
	holder: 'Person',
	number: 'Number of the signature',
	scheme: 'Scheme',
	version: (version: number, hash: string) => `version ${version}, ${hash}`,
	evidence: 'Evidence',
	evidenceText: (lessons: number, drills: number) =>
		`${lessons} ${format.plural(lessons, 'en', { one: 'lesson', other: 'lessons' })}, proving run of ${drills} ${format.plural(drills, 'en', { one: 'drill', other: 'drills' })}, practical on witness panels`,
	proves: 'What the verdict proves and what it does not',
	lapses:
		'This sheet shows what the record held when it was printed. The sign-off lapses when continued work is not confirmed in time, and can be suspended or withdrawn: ask the shop for its state.',
	printedAt: 'Printed',
	lastHash: 'Last hash of the record',
	entries: 'Entries in the record',
	hashHelp:
		'Compare the last hash with the record: a record that was cut or written anew no longer holds it at that entry.'
};

const es = {
	title: (competency: string, name: string) => `Autorización: ${competency}, ${name}`,
	refresherTitle: (competency: string, name: string) => `Firma del repaso: ${competency}, ${name}`,
	about: 'Mire la evidencia, declare qué lo une a esta persona, revise y firme.',
	refresherAbout:
		'Usted firma que lo que falló se demostró otra vez en órdenes con esas reglas. Las fechas de la autorización no se mueven.',
	state: (word: string) => `Estado hoy: ${word}`,
	against: 'Usted no puede firmarla hoy',
	renewal:
		'Ya está firmada. Firmar otra vez la renueva, y se apoya solo en pruebas y una práctica posteriores a la última firma.',
	refresherFirst: 'Aquí hay un repaso pendiente. Firme primero ese.',
	toRefresher: 'Al repaso',
	lessons: 'Lecciones',
	missing: 'por hacer',
	proving: 'Prueba',
	noRun: 'No hay ninguna prueba con resultado.',
	log: 'Cada ejercicio de la prueba',
	logHelp: 'Se muestra porque ya hay resultado. El aprendiz ve el resultado, no esta lista.',
	drill: 'Ejercicio',
	when: 'Entregado o terminado',
	outcome: 'Cómo salió',
	rules: 'Reglas incumplidas',
	right: 'bien',
	wrong: 'mal',
	givenUp: 'abandonado: cuenta como mal',
	lapsed: 'abierto demasiado tiempo: cuenta como mal',
	stop: (rule: string) => `Paro de seguridad: ${rule}`,
	none: 'ninguna',
	earlier: 'Pruebas anteriores en esta competencia',
	safety: 'Filtro de seguridad',
	practical: 'Práctica supervisada',
	noPractical: 'No hay práctica supervisada que cuente.',
	declare: 'Su declaración',
	conflict: {
		trained: '¿Formó usted a esta persona en esta competencia?',
		lineManager: '¿Es usted su jefe directo?',
		relative: '¿Son familiares?',
		paidByResult: '¿Depende su pago de cómo termine esto?'
	},
	yes: 'Sí',
	no: 'No',
	declareHelp:
		'Un sí no le impide firmar. La firma se guarda e imprime entonces como no independiente, y una segunda persona puede agregar la suya.',
	watchedBy: '¿Quién estuvo mirando mientras se resolvían los ejercicios?',
	watchedByHelp: 'Nadie también es una respuesta honesta. Se imprime.',
	nobody: 'Nadie estuvo mirando',
	reason: 'Motivo',
	reasonFor: (what: string) => `Al firmar usted pasa esto por alto: ${what}. Diga por qué es correcto.`,
	reasonHint: (least: number) => `${least} caracteres o más. Se imprime con la firma.`,
	passedOver: {
		'safety-misses-since-pass': 'paros de seguridad en ejercicios después de superar el filtro',
		'practical-reading': 'una lectura de la práctica fuera de sus límites que se aceptó'
	},
	review: 'Revisar antes de firmar',
	reviewTitle: '¿Es esto lo que quiere firmar?',
	meaning: (signer: string, name: string, competency: string) =>
		`Yo, ${signer}, miré la evidencia de arriba y apruebo: ${name} es apto para trabajar solo en esta competencia: ${competency}.`,
	refresherMeaning: (signer: string, name: string, competency: string) =>
		`Yo, ${signer}, miré la evidencia de arriba y apruebo: ${name} demostró otra vez lo que falló en esta competencia: ${competency}.`,
	declared: 'Usted declara',
	noInterest: 'ninguna de las cuatro cosas se aplica',
	nonIndependent: 'Esta firma se guardará e imprimirá como no independiente.',
	foundingLead:
		'Como responsable fundador puede firmar sin estar autorizado en ella; eso también se imprime.',
	watched: 'Estuvo mirando',
	secret: 'Su frase de acceso',
	secretHelp: 'Es su firma: se escribe solo para este acto.',
	sign: 'Firmar',
	change: 'Volver a los datos',
	signedOn: (day: string) => `La firma es para hoy, ${day}.`,
	notSigned: 'No se firmó nada.',
	wrongSecret: 'Esa no es su frase de acceso. No se firmó nada; el intento quedó en el registro.',
	emptySecret: 'Escriba su frase de acceso.',
	evidenceChanged: 'La evidencia cambió desde que usted la miró. Mírela otra vez y después firme.',
	back: (name: string) => `Volver al registro de ${name}`,
	problem: {
		unanswered: 'Conteste sí o no.',
		'no-watcher': 'Diga quién estuvo mirando, o que nadie.',
		'nobody-and-somebody': 'O alguien estuvo mirando o nadie.',
		empty: 'Complete este dato.'
	},

	continuityTitle: (competency: string, name: string) => `Sigue en el trabajo: ${competency}, ${name}`,
	continuityAbout:
		'Usted confirma que esta persona sigue haciendo este trabajo, con trabajos que hizo. Uno basta; más dicen más.',
	continuityPeriod: (from: string, to: string) => `Trabajos entre el ${from} y el ${to}`,
	continuityDue: (day: string) => `Por confirmar a más tardar el ${day}`,
	continuityNext: (day: string) => `Confirmado hoy, vuelve a tocar a más tardar el ${day}`,
	job: (line: number) => `Número de trabajo ${line}`,
	jobDay: (line: number) => `Día del trabajo ${line}`,
	continuityMeaning: 'Confirmo que esta persona hizo estos trabajos en esta competencia.',
	confirm: 'Confirmar',
	jobProblem: {
		job: 'Un número de trabajo lleva letras, cifras y . _ : / # - , sin espacios.',
		day: 'Escriba el día del trabajo como año-mes-día.',
		none: 'Nombre por lo menos un trabajo.'
	},

	sheetTitle: 'Hoja de autorización',
	sheetOf: (name: string) => `Autorizaciones de ${name}`,
	nothing: 'Para esta persona nunca se firmó nada.',
	printHelp: 'Use la orden de imprimir de su navegador; sirven A4 y carta.',
	holder: 'Persona',
	number: 'Número de la firma',
	scheme: 'Esquema',
	version: (version: number, hash: string) => `versión ${version}, ${hash}`,
	evidence: 'Evidencia',
	evidenceText: (lessons: number, drills: number) =>
		`${lessons} ${format.plural(lessons, 'es', { one: 'lección', other: 'lecciones' })}, prueba de ${drills} ${format.plural(drills, 'es', { one: 'ejercicio', other: 'ejercicios' })}, práctica supervisada con paneles testigo`,
	proves: 'Qué demuestra el resultado y qué no',
	lapses:
		'Esta hoja muestra lo que decía el registro al imprimirla. La autorización se interrumpe si no se confirma a tiempo que la persona sigue en el trabajo, y se puede suspender o retirar: pregunte al taller su estado.',
	printedAt: 'Impresa',
	lastHash: 'Último hash del registro',
	entries: 'Entradas en el registro',
	hashHelp:
		'Compare el último hash con el registro: uno cortado o escrito de nuevo ya no lo tiene en esa entrada.'
} satisfies typeof en;

/** Signing: the whole of a competency, a refresher, continued work, and the sheet that is printed. */
export const signOff = { en, es };

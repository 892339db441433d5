import { format } from '../format';

const en = {
	title: 'Record',
	intro:
		'Everything that was done, in the order it was done. Nothing in it is changed or taken away afterwards: a correction is an entry of its own. Names and free text lie apart, so that they can be erased without breaking it.',
	entries: (count: number) => `${count} ${format.plural(count, 'en', { one: 'entry', other: 'entries' })}`,
	lastHash: 'Last hash',
	lastHashHint: 'Compare it with one printed on a signed sheet: only that shows a cut end.',
	verify: 'Check the file',
	csv: 'Take it out as a table (CSV)',
	kindLabel: 'Show entries of this kind',
	allKinds: 'all kinds',
	show: 'Show',
	none: 'No entry of this kind.',
	newer: 'Newer entries',
	older: 'Older entries',
	pages: 'Pages of the record',
	page: (page: number, of: number) => `Page ${page} of ${of}`,
	by: (name: string) => `by ${name}`,
	program: 'the program',
	raw: 'As it stands in the file',
	withheld:
		'Seed, expected answers and results of a proving run are shown once it has its verdict, so that nobody reads them while being proven.',
	withheldMark: 'withheld until the verdict',

	verifyTitle: 'Check of the file',
	verifyIntro:
		'Reads the journal file on the disk from its first line, works out every hash anew and compares it with what this program holds in memory.',
	whole: (count: number) =>
		`The chain is whole: ${count} ${format.plural(count, 'en', { one: 'line', other: 'lines' })}, each following from the one before.`,
	cannotSee:
		'This cannot show entries cut off the end before the program was started, nor a file written anew from its first line. For that, compare the last hash with one printed or kept elsewhere.',
	bad: (line: number) => `Line ${line} does not belong.`,
	badBefore: 'Every line before it is whole. From this line on nothing can be relied on.',
	detail: 'Place in the line',
	why: {
		'not-json': 'It is not a readable line: part of it is missing or was overwritten.',
		'not-an-entry': 'It does not have the parts every entry has.',
		'unknown-event': 'It names a kind of entry this program does not know.',
		'wrong-data': 'Its content does not have the shape of its kind.',
		'not-canonical': 'It is not written the way this program writes: somebody rewrote it.',
		'wrong-number': 'Its number does not follow the one before: a line is missing, doubled or moved.',
		'wrong-link': 'It does not carry the hash of the line before: a line was changed, removed or put in.',
		'wrong-hash': 'Its hash does not fit its content: the line was changed after it was written.',
		'earlier-than-before': 'It is dated before the line before it.',
		'act-cut-short': 'It belongs to an act that was not written to its end.'
	},
	torn: (bytes: number) =>
		`After the last whole line lie ${bytes} bytes of an unfinished one. It was never acknowledged; the next start removes it and says so.`,
	agrees: 'The file holds what this program shows.',
	differs: (file: number, held: number) =>
		`The file holds ${file} whole lines, this program ${held}: the file was changed from outside while the program ran.`,
	again: 'Check again',
	toRecord: 'Back to the record',
	repairs: 'Repairs of a torn end',

	columns: {
		seq: 'Number',
		at: 'Time (UTC)',
		actor: 'By',
		event: 'Entry',
		person: 'About',
		data: 'Content',
		hash: 'Hash'
	},

	/** Every kind of entry. */
	kind: {
		'shop.founded': 'Shop set up',
		'sheet.saved': 'Data sheet saved',
		'shop-value.set': 'Shop value set',
		'scheme.set': 'Scheme set',
		'person.added': 'Person added',
		'person.roles-set': 'Parts in the shop set',
		'person.secret-set': 'PIN or passphrase set',
		'person.erased': 'Name and texts erased',
		'auditor.opened': 'Access opened for an auditor',
		'training.started': 'Admitted to training',
		'lesson.done': 'Lesson done',
		'practice.handed-in': 'Practice drill handed in',
		'practice.first-check': 'Practice drill: first check',
		'proving.opened': 'Proving run begun',
		'proving.issued': 'Proving ticket issued',
		'proving.handed-in': 'Proving drill handed in',
		'proving.given-up': 'Proving drill left',
		'proving.concluded': 'Proving run: verdict',
		'safety.concluded': 'Safety gate: verdict',
		'safety.restarted': 'Safety gate opened again',
		'practical.recorded': 'Practical recorded',
		'signoff.granted': 'Signed off',
		'signoff.second-person': 'Second signature',
		'signoff.suspended': 'Sign-off suspended',
		'signoff.reinstated': 'Suspension lifted',
		'signoff.withdrawn': 'Sign-off withdrawn',
		'continuity.confirmed': 'Continuity confirmed',
		'incident.reported': 'Incident reported',
		'incident.cause-recorded': 'Test of a cause entered',
		'incident.decided': 'Incident decided',
		'refresher.signed': 'Refresher signed',
		'incident.closed': 'Incident closed',
		'act.refused': 'Refused',
		'journal.repaired': 'Torn end removed',
		'clock.set-back': 'Clock set back'
	},
	told: {
		from: (day: string) => `from ${day}`,
		until: (when: string) => `until ${when}`,
		validUntil: (day: string) => `valid until ${day}`,
		confirmBy: (day: string) => `to be confirmed by ${day}`,
		reviewBy: (day: string) => `to be looked at again by ${day}`,
		revision: (revision: number) => `revision ${revision}`,
		version: (version: number) => `version ${version}`,
		hints: (count: number) => `${count} ${format.plural(count, 'en', { one: 'hint', other: 'hints' })}`,
		unkept: (count: number) =>
			`${count} ${format.plural(count, 'en', { one: 'rule', other: 'rules' })} not kept before correcting`,
		drills: (right: number, of: number) => `${right} of ${of} right`,
		safetyDrills: (misses: number, of: number) =>
			`${misses} safety ${format.plural(misses, 'en', { one: 'miss', other: 'misses' })} in ${of} drills`,
		texts: (count: number) => `${count} ${format.plural(count, 'en', { one: 'text', other: 'texts' })}`,
		jobs: (jobs: string) => `jobs: ${jobs}`,
		jobsChecked: (count: number) =>
			`${count} ${format.plural(count, 'en', { one: 'job', other: 'jobs' })} looked at`,
		rules: (count: number) => `${count} ${format.plural(count, 'en', { one: 'rule', other: 'rules' })}`,
		bytes: (count: number) => `${count} ${format.plural(count, 'en', { one: 'byte', other: 'bytes' })}`,
		fromTo: (from: string, to: string) => `from ${from} to ${to}`,
		purpose: {
			first: 'first run',
			retest: 'new try',
			renewal: 'renewal',
			refresher: 'refresher'
		},
		how: {
			'start-training': 'from the beginning',
			recertify: 'again after expiry',
			'start-over': 'over again',
			'new-application': 'on a new application'
		},
		left: { 'given-up': 'given up', lapsed: 'left open too long' },
		verdict: { passed: 'passed', failed: 'not passed', stopped: 'stopped' },
		result: { accepted: 'accepted', refused: 'refused' },
		right: 'right',
		notRight: 'not right',
		late: 'entered late',
		override: 'something was passed over, with a reason',
		nonIndependent: 'not independent',
		foundingLead: 'by the founding lead',
		found: { yes: 'yes', no: 'no', unclear: 'unclear' },
		cause: { system: 'way of working', 'skill-gap': 'skill gap' },
		demo: 'demo shop'
	}
};

const es = {
	title: 'Registro',
	intro:
		'Todo lo que se hizo, en el orden en que se hizo. Nada se cambia ni se quita después: una corrección es otra entrada. Los nombres y textos libres están aparte, para poder borrarlos sin romperlo.',
	entries: (count: number) => `${count} ${format.plural(count, 'es', { one: 'entrada', other: 'entradas' })}`,
	lastHash: 'Último hash',
	lastHashHint: 'Compárelo con el impreso en una hoja firmada: solo eso muestra si falta el final.',
	verify: 'Revisar el archivo',
	csv: 'Sacarlo como tabla (CSV)',
	kindLabel: 'Mostrar entradas de este tipo',
	allKinds: 'todos los tipos',
	show: 'Mostrar',
	none: 'No hay entradas de este tipo.',
	newer: 'Entradas más nuevas',
	older: 'Entradas más viejas',
	pages: 'Páginas del registro',
	page: (page: number, of: number) => `Página ${page} de ${of}`,
	by: (name: string) => `por ${name}`,
	program: 'el programa',
	raw: 'Tal como está en el archivo',
	withheld:
		'La semilla, las respuestas esperadas y los resultados de una prueba se muestran cuando tiene su resultado final, para que nadie los lea mientras se le comprueba.',
	withheldMark: 'reservado hasta el resultado',

	verifyTitle: 'Revisión del archivo',
	verifyIntro:
		'Lee el archivo del diario en el disco desde la primera línea, calcula de nuevo cada hash y lo compara con lo que este programa tiene en memoria.',
	whole: (count: number) =>
		`La cadena está completa: ${count} ${format.plural(count, 'es', { one: 'línea', other: 'líneas' })}, cada una enlazada con la anterior.`,
	cannotSee:
		'Esto no puede mostrar entradas cortadas del final antes de iniciar el programa, ni un archivo escrito de nuevo desde la primera línea. Para eso, compare el último hash con uno impreso o guardado en otro lugar.',
	bad: (line: number) => `La línea ${line} no corresponde.`,
	badBefore: 'Todas las líneas anteriores están completas. Desde esta línea no se puede confiar en nada.',
	detail: 'Lugar en la línea',
	why: {
		'not-json': 'No es una línea legible: le falta una parte o se sobrescribió.',
		'not-an-entry': 'No tiene las partes que toda entrada tiene.',
		'unknown-event': 'Nombra un tipo de entrada que este programa no conoce.',
		'wrong-data': 'Su contenido no tiene la forma de su tipo.',
		'not-canonical': 'No está escrita como escribe este programa: alguien la reescribió.',
		'wrong-number': 'Su número no sigue al anterior: falta una línea, está repetida o se movió.',
		'wrong-link': 'No lleva el hash de la línea anterior: se cambió, quitó o agregó una línea.',
		'wrong-hash': 'Su hash no corresponde a su contenido: la línea se cambió después de escribirse.',
		'earlier-than-before': 'Tiene fecha anterior a la de la línea previa.',
		'act-cut-short': 'Pertenece a un acto que no se escribió hasta el final.'
	},
	torn: (bytes: number) =>
		`Después de la última línea completa hay ${bytes} bytes de una sin terminar. Nunca se confirmó; al siguiente inicio se quita y se avisa.`,
	agrees: 'El archivo contiene lo que muestra este programa.',
	differs: (file: number, held: number) =>
		`El archivo tiene ${file} líneas completas y este programa ${held}: el archivo se cambió desde fuera mientras el programa corría.`,
	again: 'Revisar otra vez',
	toRecord: 'Volver al registro',
	repairs: 'Reparaciones de un final cortado',

	columns: {
		seq: 'Número',
		at: 'Hora (UTC)',
		actor: 'Por',
		event: 'Entrada',
		person: 'Sobre',
		data: 'Contenido',
		hash: 'Hash'
	},

	kind: {
		'shop.founded': 'Taller creado',
		'sheet.saved': 'Hoja técnica guardada',
		'shop-value.set': 'Valor del taller fijado',
		'scheme.set': 'Esquema fijado',
		'person.added': 'Persona agregada',
		'person.roles-set': 'Funciones en el taller fijadas',
		'person.secret-set': 'PIN o frase de acceso fijados',
		'person.erased': 'Nombre y textos borrados',
		'auditor.opened': 'Acceso abierto a un auditor',
		'training.started': 'Admisión a la capacitación',
		'lesson.done': 'Lección hecha',
		'practice.handed-in': 'Ejercicio de práctica entregado',
		'practice.first-check': 'Ejercicio de práctica: primera revisión',
		'proving.opened': 'Prueba empezada',
		'proving.issued': 'Orden de comprobación emitida',
		'proving.handed-in': 'Ejercicio de comprobación entregado',
		'proving.given-up': 'Ejercicio de comprobación dejado',
		'proving.concluded': 'Prueba: resultado',
		'safety.concluded': 'Filtro de seguridad: resultado',
		'safety.restarted': 'Filtro de seguridad abierto otra vez',
		'practical.recorded': 'Práctica supervisada registrada',
		'signoff.granted': 'Autorización firmada',
		'signoff.second-person': 'Segunda firma',
		'signoff.suspended': 'Autorización suspendida',
		'signoff.reinstated': 'Suspensión levantada',
		'signoff.withdrawn': 'Autorización retirada',
		'continuity.confirmed': 'Continuidad confirmada',
		'incident.reported': 'Incidente reportado',
		'incident.cause-recorded': 'Prueba de una causa registrada',
		'incident.decided': 'Incidente decidido',
		'refresher.signed': 'Repaso firmado',
		'incident.closed': 'Incidente cerrado',
		'act.refused': 'Rechazado',
		'journal.repaired': 'Final cortado quitado',
		'clock.set-back': 'Reloj atrasado'
	},
	told: {
		from: (day: string) => `desde el ${day}`,
		until: (when: string) => `hasta el ${when}`,
		validUntil: (day: string) => `vale hasta el ${day}`,
		confirmBy: (day: string) => `por confirmar antes del ${day}`,
		reviewBy: (day: string) => `por revisar antes del ${day}`,
		revision: (revision: number) => `revisión ${revision}`,
		version: (version: number) => `versión ${version}`,
		hints: (count: number) => `${count} ${format.plural(count, 'es', { one: 'pista', other: 'pistas' })}`,
		unkept: (count: number) =>
			`${count} ${format.plural(count, 'es', { one: 'regla', other: 'reglas' })} sin cumplir antes de corregir`,
		drills: (right: number, of: number) => `${right} de ${of} bien`,
		safetyDrills: (misses: number, of: number) =>
			`${misses} ${format.plural(misses, 'es', { one: 'falta', other: 'faltas' })} de seguridad en ${of} ejercicios`,
		texts: (count: number) => `${count} ${format.plural(count, 'es', { one: 'texto', other: 'textos' })}`,
		jobs: (jobs: string) => `trabajos: ${jobs}`,
		jobsChecked: (count: number) =>
			`${count} ${format.plural(count, 'es', { one: 'trabajo revisado', other: 'trabajos revisados' })}`,
		rules: (count: number) => `${count} ${format.plural(count, 'es', { one: 'regla', other: 'reglas' })}`,
		bytes: (count: number) => `${count} ${format.plural(count, 'es', { one: 'byte', other: 'bytes' })}`,
		fromTo: (from: string, to: string) => `de ${from} a ${to}`,
		purpose: {
			first: 'primera prueba',
			retest: 'nuevo intento',
			renewal: 'renovación',
			refresher: 'repaso'
		},
		how: {
			'start-training': 'desde el principio',
			recertify: 'otra vez tras el vencimiento',
			'start-over': 'empezar de nuevo',
			'new-application': 'con una nueva solicitud'
		},
		left: { 'given-up': 'abandonado', lapsed: 'abierto demasiado tiempo' },
		verdict: { passed: 'aprobado', failed: 'no aprobado', stopped: 'detenido' },
		result: { accepted: 'aceptada', refused: 'rechazada' },
		right: 'bien',
		notRight: 'no está bien',
		late: 'registrada tarde',
		override: 'se pasó algo por alto, con motivo',
		nonIndependent: 'no independiente',
		foundingLead: 'por el responsable fundador',
		found: { yes: 'sí', no: 'no', unclear: 'no queda claro' },
		cause: { system: 'forma de trabajar', 'skill-gap': 'falta de habilidad' },
		demo: 'taller de demostración'
	}
} satisfies typeof en;

export const record = { en, es };

const en = {
	title: 'Shop',
	intro:
		'What this shop decides for itself: who works here, which coatings it sprays, its own numbers, and how people are proven and signed.',
	name: 'Name of the shop',
	timeZone: 'Time zone of its days',
	since: 'In this record since',
	rooms: 'What you can look at and set',
	people: 'People',
	peopleMeans: 'who works here, their parts, first secrets, an auditor’s access, erasing a name',
	sheets: 'Data sheets',
	sheetsMeans: 'the coatings this shop sprays, each number with its unit, source and first day',
	values: 'Shop values',
	valuesMeans: 'numbers nobody publishes: what is common in the trade until this shop sets its own',
	scheme: 'Scheme',
	schemeMeans: 'how many drills, which risks, how long a sign-off holds',
	noSheetsYet:
		'This shop has no data sheets yet. Without one no job ticket can be issued: enter a sheet or add the demo sheets.',
	backup: 'Backup',
	folder: 'Everything lies in this folder on the PC that runs the program:',
	copy: 'Stop the program, copy the whole folder to another disk, start it again. Do it every week and before an update.',
	files: {
		journal: 'the record: every act, one line each',
		texts: 'names and free text, kept apart so that they can be erased',
		secrets: 'PINs and passphrases, as hashes',
		rest: 'the key of sign-in cookies and unfinished work'
	},
	erasedInCopies: 'A copy made before a person was erased still holds the name. Delete old copies in time.',
	head: 'Write these beside the backup: they show later that no line was changed or cut off.',
	entries: 'Entries in the journal',
	lastHash: 'Hash of the last',
	back: 'Back to the shop',
	onlyRead: 'You can read this page; only a lead changes it.',
	save: 'Save',
	notTaken: 'Nothing was saved.',
	empty: 'Fill this in.',
	choose: 'Choose one.',
	tooLong: (most: number) => `At most ${most} characters.`,
	noDay: 'Choose a day of the calendar.',
	past: (today: string) => `Choose ${today} or a later day: what held in the past stays as it was.`
};

const es = {
	title: 'Taller',
	intro:
		'Lo que este taller decide por sí mismo: quién trabaja aquí, qué recubrimientos aplica, sus propios números y cómo se comprueba y autoriza a las personas.',
	name: 'Nombre del taller',
	timeZone: 'Zona horaria de sus días',
	since: 'En este registro desde',
	rooms: 'Qué puede consultar y fijar',
	people: 'Personas',
	peopleMeans:
		'quién trabaja aquí, sus funciones, los primeros accesos, la consulta de un auditor, borrar un nombre',
	sheets: 'Hojas técnicas',
	sheetsMeans: 'los recubrimientos que aplica este taller, cada número con su unidad, fuente y primer día',
	values: 'Valores del taller',
	valuesMeans: 'números que nadie publica: lo común en el oficio hasta que este taller fije los suyos',
	scheme: 'Esquema',
	schemeMeans: 'cuántos ejercicios, qué riesgos, cuánto vale una autorización',
	noSheetsYet:
		'Este taller todavía no tiene hojas técnicas. Sin una no se puede emitir ninguna orden de trabajo: anote una hoja o agregue las de demostración.',
	backup: 'Copia de seguridad',
	folder: 'Todo está en esta carpeta de la computadora donde corre el programa:',
	copy: 'Detenga el programa, copie la carpeta completa a otro disco y vuelva a iniciarlo. Hágalo cada semana y antes de una actualización.',
	files: {
		journal: 'el registro: cada acto en una línea',
		texts: 'nombres y texto libre, aparte para poder borrarlos',
		secrets: 'los PIN y las frases de acceso, como huellas',
		rest: 'la clave de las cookies de inicio de sesión y el trabajo sin terminar'
	},
	erasedInCopies:
		'Una copia hecha antes de borrar a una persona todavía tiene su nombre. Elimine a tiempo las copias viejas.',
	head: 'Escriba esto junto a la copia: más tarde muestra que ninguna línea se cambió ni se cortó.',
	entries: 'Líneas del registro',
	lastHash: 'Huella de la última',
	back: 'Volver al taller',
	onlyRead: 'Usted puede leer esta página; solo un responsable la cambia.',
	save: 'Guardar',
	notTaken: 'No se guardó nada.',
	empty: 'Complete este dato.',
	choose: 'Elija una opción.',
	tooLong: (most: number) => `${most} caracteres como máximo.`,
	noDay: 'Elija un día del calendario.',
	past: (today: string) => `Elija el ${today} o un día posterior: lo que rigió antes queda como estaba.`
} satisfies typeof en;

/** The lead's screen, its first page and what its rooms share. */
export const shop = { en, es };

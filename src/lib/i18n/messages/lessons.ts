import { format } from '../format';

const en = {
	title: 'Lessons',
	intro:
		'One lesson after another, in the order of the work. The numbers in them are those of this shop today. A lesson is done when every check in it was answered right, in any number of tries.',
	aim: 'What it is for',
	place: {
		open: 'to do',
		begun: (right: number, of: number) => `begun: ${right} of ${of} checks answered right`,
		done: (date: string) => `done on ${date}`,
		changed: (date: string) => `done on ${date}, and changed since`
	},
	visitor:
		'You can read and answer everything. Nothing is recorded, because nobody who trains here is signed in.',
	before: 'Before this',
	after: 'After this',
	all: 'All lessons',

	limits: 'What this shop expects',
	asOn: 'as on',
	notCalledFor:
		'No data sheet of this shop calls for this on the example jobs, so there is no number to show.',
	notCalledForShort: 'not called for by any sheet of this shop',
	toRule: (title: string) => `The rule: ${title}`,

	mistake: 'The usual mistake',
	rulesInto: 'Rules that lead to it when broken',
	example: 'Worked example, invented numbers',
	sum: 'Worked sum, numbers without a source are invented',
	asAbove: 'The rest as above.',
	holds: 'Within what this holds',
	check: 'Check',
	job: (name: string) => `The job: ${name}`,
	sheet: 'Data sheet',
	answer: 'Check my answer',
	again: 'Check again',
	notAsked:
		'Not asked in this shop: none of its data sheets calls for it on the example jobs. It does not stand in the way of the lesson.',
	answered: 'Answered right.',
	right: 'Right.',
	wrong: 'Not right yet. Read why, then try again.',
	unread: 'This could not be read. It does not count as a try.',
	empty: 'Nothing was answered. It does not count as a try.',
	because: 'Why',

	valuesHead: ['Of what', 'In this shop', 'From'],
	drills: 'Practise this',
	toWall: 'One sheet of this for the wall',
	toLesson: 'Back to the lesson',
	wallNote: 'Numbers of this shop on this day, for the job beside each. The job’s own data sheet decides.',

	standing: 'Where you stand',
	left: (count: number) =>
		`${count} ${format.plural(count, 'en', { one: 'check is', other: 'checks are' })} still to be answered right.`,
	allRight: 'Every check is answered right.',
	recorded: 'Lesson done. It is in the record.',
	notRecorded:
		'All checks are right, but the record did not take it. Answer one check again or tell your lead.'
};

const es = {
	title: 'Lecciones',
	intro:
		'Una lección tras otra, en el orden del trabajo. Los números son los de este taller hoy. Una lección queda hecha cuando cada verificación se contestó bien, en los intentos que hagan falta.',
	aim: 'Para qué sirve',
	place: {
		open: 'por hacer',
		begun: (right: number, of: number) => `empezada: ${right} de ${of} verificaciones contestadas bien`,
		done: (date: string) => `hecha el ${date}`,
		changed: (date: string) => `hecha el ${date}; cambió después`
	},
	visitor:
		'Puede leer y contestar todo. Nada se registra, porque no hay sesión de nadie que se entrene aquí.',
	before: 'Antes de esta',
	after: 'Después de esta',
	all: 'Todas las lecciones',

	limits: 'Lo que espera este taller',
	asOn: 'como en',
	notCalledFor:
		'Ninguna hoja técnica de este taller lo pide en los trabajos de ejemplo; por eso no hay número que mostrar.',
	notCalledForShort: 'ninguna hoja de este taller lo pide',
	toRule: (title: string) => `La regla: ${title}`,

	mistake: 'El error de siempre',
	rulesInto: 'Reglas que llevan a esto si se rompen',
	example: 'Ejemplo resuelto, números inventados',
	sum: 'Cálculo resuelto, números sin fuente inventados',
	asAbove: 'Lo demás, como arriba.',
	holds: 'Entre qué límites vale esto',
	check: 'Verificación',
	job: (name: string) => `El trabajo: ${name}`,
	sheet: 'Hoja técnica',
	answer: 'Revisar mi respuesta',
	again: 'Revisar otra vez',
	notAsked:
		'No se pregunta en este taller: ninguna de sus hojas técnicas lo pide en los trabajos de ejemplo. No impide terminar la lección.',
	answered: 'Contestada bien.',
	right: 'Correcto.',
	wrong: 'Todavía no. Lea por qué e intente otra vez.',
	unread: 'No se pudo leer. No cuenta como intento.',
	empty: 'No hay respuesta. No cuenta como intento.',
	because: 'Por qué',

	valuesHead: ['De qué', 'En este taller', 'De dónde sale'],
	drills: 'Practique esto',
	toWall: 'Una hoja de esto para la pared',
	toLesson: 'Volver a la lección',
	wallNote:
		'Números de este taller en este día, para el trabajo que está al lado. Decide la hoja técnica de cada trabajo.',

	standing: 'Cómo va',
	left: (count: number) =>
		`${format.plural(count, 'es', { one: 'Falta', other: 'Faltan' })} ${count} ${format.plural(count, 'es', { one: 'verificación', other: 'verificaciones' })} por contestar bien.`,
	allRight: 'Todas las verificaciones están bien contestadas.',
	recorded: 'Lección hecha. Quedó en el registro.',
	notRecorded:
		'Todas las verificaciones están bien, pero el registro no lo aceptó. Conteste una otra vez o avise a su responsable.'
} satisfies typeof en;

export const lessons = { en, es };

import { format } from '../format';

const en = {
	title: 'Scheme',
	intro:
		'The numbers by which people are proven, signed and kept current. They are this shop’s policy: no law and no standard sets them for this trade.',
	past: 'A new version holds from its day on. Verdicts, signatures and dates given before stay as they were, and so do runs already open.',
	inForce: (version: number) => `Version ${version} holds today.`,
	newer: (version: number) => `Version ${version} was entered already; the form shows it.`,
	group: {
		sequential: 'Proving a competency',
		safety: 'Safety gate',
		validity: 'How long a sign-off holds',
		continuity: 'Continuity',
		renewal: 'Renewal after expiry',
		retest: 'Trying again',
		drill: 'A proving drill',
		notice: 'Notices before a date'
	},
	unit: {
		share: (number: string) => `${number} %`,
		drills: (number: string, value: number) =>
			`${number} ${format.plural(value, 'en', { one: 'drill', other: 'drills' })}`,
		times: (number: string, value: number) =>
			`${number} ${format.plural(value, 'en', { one: 'time', other: 'times' })}`,
		hours: (number: string, value: number) =>
			`${number} ${format.plural(value, 'en', { one: 'hour', other: 'hours' })}`,
		days: (number: string, value: number) =>
			`${number} ${format.plural(value, 'en', { one: 'day', other: 'days' })}`,
		months: (number: string, value: number) =>
			`${number} ${format.plural(value, 'en', { one: 'month', other: 'months' })}`
	},
	what: 'What',
	holds: 'Holds',
	delivered: 'As delivered',
	because: 'Why it is there',
	between: (low: string, high: string) => `From ${low} to ${high}.`,
	offStep: (step: string) => `Set it in steps of ${step}.`,
	problem: {
		'p0-not-below-p1': 'The share that must not pass has to be below the share that should pass.',
		'more-right-than-drills': 'More right drills are asked for than the run has drills.',
		'passes-too-many-unfit':
			'Worked out exactly, these numbers let an unfit person pass more often than the accepted chance: lengthen the run, or ask for more right drills at its end.',
		'fails-too-many-fit':
			'Worked out exactly, these numbers fail a fit person more often than the accepted chance: lengthen the run, or ask for fewer right drills at its end.',
		'clean-run-not-shorter': 'The run without a miss has to be shorter than the run with one.',
		'clears-too-many-unsafe':
			'Worked out exactly, these runs clear an unsafe person more often than the accepted chance: lengthen them.',
		'safety-holds-longer':
			'A sign-off with safety skills cannot hold longer than one without: shorten it, or lengthen the other.',
		'not-descending': 'Each notice has to come later than the one before: fewer days each time.',
		'not-this-form': 'This is not a scheme as the form sends it. Load the page again.'
	},
	form: 'New version',
	effective: 'From',
	effectiveHint: 'Today or later.',
	set: 'Save as a new version',
	changedMeanwhile: 'Somebody else saved a version in the meantime. Load the page again; theirs is not lost.',
	versions: 'Versions',
	version: 'Version',
	from: 'From',
	by: 'By',
	changes: 'What it changed',
	first: 'the first: as delivered',
	nothing: 'nothing but the day',
	change: (label: string, was: string, is: string) => `${label}: ${was} → ${is}`,
	done: 'The new version was saved.'
};

const es = {
	title: 'Esquema',
	intro:
		'Los números con que se comprueba, se autoriza y se mantiene al día a las personas. Son política de este taller: ninguna ley ni norma los fija para este oficio.',
	past: 'Una versión nueva rige desde su día. Los resultados, las firmas y las fechas dadas antes quedan como estaban, y también las pruebas ya abiertas.',
	inForce: (version: number) => `Hoy rige la versión ${version}.`,
	newer: (version: number) => `La versión ${version} ya está anotada; el formulario la muestra.`,
	group: {
		sequential: 'Comprobar una competencia',
		safety: 'Filtro de seguridad',
		validity: 'Cuánto vale una autorización',
		continuity: 'Continuidad',
		renewal: 'Renovación tras el vencimiento',
		retest: 'Intentar de nuevo',
		drill: 'Un ejercicio de comprobación',
		notice: 'Avisos antes de una fecha'
	},
	unit: {
		share: (number: string) => `${number} %`,
		drills: (number: string, value: number) =>
			`${number} ${format.plural(value, 'es', { one: 'ejercicio', other: 'ejercicios' })}`,
		times: (number: string, value: number) =>
			`${number} ${format.plural(value, 'es', { one: 'vez', other: 'veces' })}`,
		hours: (number: string, value: number) =>
			`${number} ${format.plural(value, 'es', { one: 'hora', other: 'horas' })}`,
		days: (number: string, value: number) =>
			`${number} ${format.plural(value, 'es', { one: 'día', other: 'días' })}`,
		months: (number: string, value: number) =>
			`${number} ${format.plural(value, 'es', { one: 'mes', other: 'meses' })}`
	},
	what: 'Qué',
	holds: 'Rige',
	delivered: 'De origen',
	because: 'Para qué está',
	between: (low: string, high: string) => `De ${low} a ${high}.`,
	offStep: (step: string) => `Fíjelo en pasos de ${step}.`,
	problem: {
		'p0-not-below-p1': 'La proporción que no debe pasar tiene que ser menor que la que debe pasar.',
		'more-right-than-drills': 'Se piden más ejercicios correctos que los que tiene la prueba.',
		'passes-too-many-unfit':
			'En cálculo exacto, estos números aprueban a quien no está listo más veces que el riesgo aceptado: alargue la prueba o pida más ejercicios correctos al final.',
		'fails-too-many-fit':
			'En cálculo exacto, estos números rechazan a quien sí está listo más veces que el riesgo aceptado: alargue la prueba o pida menos ejercicios correctos al final.',
		'clean-run-not-shorter': 'La serie sin falta tiene que ser más corta que la serie con una.',
		'clears-too-many-unsafe':
			'En cálculo exacto, estas series dejan pasar a una persona insegura más veces que el riesgo aceptado: alárguelas.',
		'safety-holds-longer':
			'Una autorización con habilidades de seguridad no puede valer más tiempo que una sin ellas: acórtela o alargue la otra.',
		'not-descending': 'Cada aviso tiene que venir después del anterior: menos días cada vez.',
		'not-this-form': 'Esto no es un esquema como lo envía el formulario. Cargue la página otra vez.'
	},
	form: 'Versión nueva',
	effective: 'Desde',
	effectiveHint: 'Hoy o después.',
	set: 'Guardar como versión nueva',
	changedMeanwhile:
		'Otra persona guardó una versión mientras tanto. Cargue la página otra vez; la suya no se pierde.',
	versions: 'Versiones',
	version: 'Versión',
	from: 'Desde',
	by: 'Por',
	changes: 'Qué cambió',
	first: 'la primera: de origen',
	nothing: 'solo el día',
	change: (label: string, was: string, is: string) => `${label}: ${was} → ${is}`,
	done: 'La versión nueva quedó guardada.'
} satisfies typeof en;

export const shopScheme = { en, es };

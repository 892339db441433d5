const en = {
	title: 'Shop values',
	intro:
		'Numbers of the trade that no law and no data sheet fixes for you. Until this shop sets its own, the tool uses what is common in the trade or what was read, and says which.',
	order:
		'Law, the safety data sheet, the customer’s drawing and the coating’s data sheet come before these. Legal limits are not in this list and cannot be changed.',
	stations: 'Stations',
	practical: 'Practical on witness panels',
	holds: 'Holds today',
	setBy: (by: string, date: string) => `set by the shop from ${date}, by ${by}`,
	delivered: 'As delivered',
	coming: (amount: string, date: string) => `from ${date}: ${amount}`,
	all: 'All shop values',

	form: 'Set this value',
	value: 'Value',
	min: 'Lowest',
	max: 'Highest',
	from: 'From',
	fromHint: 'Today or later. Until that day the value stays as it is.',
	reason: 'Reason',
	reasonHint: 'What somebody asks who finds the number changed a year from now.',
	reasonMissing: 'Say why, so that it can be understood later.',
	decisions: 'What the shop decided so far, the newest first',
	decidedBy: 'By',
	decidedAt: 'Entered',
	noReason: 'none given',
	none: 'The shop has not set this value yet.',
	done: 'The value was set.',

	gear: 'Protective gear by task',
	gearLink: 'Set the gear listed per task',
	gearIntro:
		'What your own written hazard assessment lists for each task. Drills and lessons then ask for this gear. The ticks to begin with are the least that is common for the task; they are no assessment of your shop. Breathing protection is not in this list: its rules are law.',
	gearNothing: 'nothing listed',
	gearDelivered: 'as delivered: common practice, from memory',
	gearSetBy: (by: string, date: string) => `last changed from ${date}, by ${by}`,
	gearUnchanged: 'Nothing in it is different from what holds on that day.',
	gearDone: 'The list was saved.'
};

const es = {
	title: 'Valores del taller',
	intro:
		'Números del oficio que ninguna ley ni hoja técnica fija por usted. Hasta que este taller fije los suyos, la herramienta usa lo común en el oficio o lo que se leyó, y dice cuál.',
	order:
		'La ley, la hoja de datos de seguridad, el plano del cliente y la hoja técnica del recubrimiento van antes que estos. Los límites legales no están en esta lista y no se pueden cambiar.',
	stations: 'Estaciones',
	practical: 'Práctica en paneles testigo',
	holds: 'Rige hoy',
	setBy: (by: string, date: string) => `fijado por el taller desde el ${date}, por ${by}`,
	delivered: 'De origen',
	coming: (amount: string, date: string) => `desde el ${date}: ${amount}`,
	all: 'Todos los valores del taller',

	form: 'Fijar este valor',
	value: 'Valor',
	min: 'Mínimo',
	max: 'Máximo',
	from: 'Desde',
	fromHint: 'Hoy o después. Hasta ese día el valor queda como está.',
	reason: 'Motivo',
	reasonHint: 'Lo que preguntaría quien dentro de un año encuentre cambiado el número.',
	reasonMissing: 'Diga por qué, para que se entienda más tarde.',
	decisions: 'Lo que el taller ha decidido, lo más nuevo primero',
	decidedBy: 'Por',
	decidedAt: 'Anotado',
	noReason: 'no se dio',
	none: 'El taller todavía no ha fijado este valor.',
	done: 'El valor quedó fijado.',

	gear: 'Equipo de protección por tarea',
	gearLink: 'Fijar el equipo de cada tarea',
	gearIntro:
		'Lo que su propia evaluación escrita de peligros pide para cada tarea. Los ejercicios y las lecciones piden entonces este equipo. Lo marcado al principio es lo mínimo común para la tarea; no es una evaluación de su taller. La protección respiratoria no está en esta lista: sus reglas son ley.',
	gearNothing: 'nada',
	gearDelivered: 'de origen: práctica común, de memoria',
	gearSetBy: (by: string, date: string) => `último cambio desde el ${date}, por ${by}`,
	gearUnchanged: 'No hay nada distinto de lo que rige ese día.',
	gearDone: 'La lista quedó guardada.'
} satisfies typeof en;

export const shopValues = { en, es };

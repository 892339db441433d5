const en = {
	title: 'Practice',
	intro:
		'A practice drill is a random job ticket. You fill in the set-up sheet station by station, check each station, and see what the rules say. Practice never counts.',
	inHand: 'You have a practice ticket in hand.',
	goOn: 'Go on with it',
	issue: 'Issue a ticket',
	breadthLegend: 'How much is on the ticket?',
	breadth: {
		1: 'One thing to notice at most',
		2: 'One or two things to notice',
		3: 'Several things, mixed parts'
	},
	partLegend: 'What do you want to practise?',
	whole: 'The whole job',
	oneStation: (station: string) => `One station: ${station}`,
	short: (title: string, about: string) => `Short drill: ${title} (${about})`,
	noSheets: 'No data sheet of this shop gets that far. The lead adds data sheets under Shop.',
	wrongChoice: 'Choose from the list.',
	sheetHeading: 'Data sheet',
	check: 'Check this station',
	next: 'On to the next station',
	finish: 'Hand in',
	hintButton: (label: string) => `Hint: ${label}`,
	hintShort: ['Where do I look?', 'What is the rule?', 'Show me how it is worked out'],
	hintWhere: 'The lesson section:',
	hintRule: 'The rule:',
	hintWorked: 'Worked out for this ticket:',
	checkedClear: 'Everything at this station is in its window.',
	checkedFindings: (count: number) =>
		count === 1 ? 'One entry is outside its window.' : `${count} entries are outside their windows.`,
	tampered: 'That form did not come from this page. Nothing was changed.',
	unreadable: 'Some entries cannot be read. Correct them first.',
	doneTitle: 'Handed in',
	result: {
		clear: 'Everything was in its window.',
		findings: 'There are findings.',
		'safety-stop': 'Safety stop: this overrides everything else on the sheet.'
	},
	kept: (kept: number, amber: number, of: number) =>
		`${kept} of ${of} rules kept${amber ? `, ${amber} in amber` : ''}. Partial credit exists in practice only.`,
	woven: 'What was woven into this ticket',
	wovenNone: 'Nothing was woven into this ticket: it was an ordinary job.',
	askedRight: { ask: 'This job could not start without asking.', refuse: 'This job had to be refused.' },
	again: 'Another ticket',
	lookCloser: 'Look closer',
	view: {
		plain: 'as it hangs there',
		raking: 'under raking light, relief drawn stronger',
		loupe: 'under the loupe, relief drawn stronger',
		section: 'cut through, heights drawn many times larger'
	},
	stationOf: (station: string) => `Station: ${station}`
};

const es = {
	title: 'Ejercicios de práctica',
	intro:
		'Un ejercicio de práctica es una orden de trabajo al azar. Usted llena la hoja de ajuste estación por estación, revisa cada estación y ve qué dicen las reglas. Estos ejercicios nunca cuentan.',
	inHand: 'Tiene una orden de práctica a medias.',
	goOn: 'Seguir con ella',
	issue: 'Emitir una orden',
	breadthLegend: '¿Cuánto trae la orden?',
	breadth: {
		1: 'A lo más una cosa que notar',
		2: 'Una o dos cosas que notar',
		3: 'Varias cosas, piezas mezcladas'
	},
	partLegend: '¿Qué quiere practicar?',
	whole: 'El trabajo completo',
	oneStation: (station: string) => `Una estación: ${station}`,
	short: (title: string, about: string) => `Ejercicio corto: ${title} (${about})`,
	noSheets: 'Ninguna hoja técnica de este taller llega hasta ahí. El responsable las agrega en Taller.',
	wrongChoice: 'Elija de la lista.',
	sheetHeading: 'Hoja técnica',
	check: 'Revisar esta estación',
	next: 'Pasar a la siguiente estación',
	finish: 'Entregar',
	hintButton: (label: string) => `Pista: ${label}`,
	hintShort: ['¿Dónde busco?', '¿Cuál es la regla?', 'Muéstreme cómo se calcula'],
	hintWhere: 'La sección de la lección:',
	hintRule: 'La regla:',
	hintWorked: 'Resuelto para esta orden:',
	checkedClear: 'Todo en esta estación está dentro de su ventana.',
	checkedFindings: (count: number) =>
		count === 1 ? 'Un dato está fuera de su ventana.' : `${count} datos están fuera de sus ventanas.`,
	tampered: 'Ese formulario no salió de esta página. No se cambió nada.',
	unreadable: 'Hay datos que no se pueden leer. Corríjalos primero.',
	doneTitle: 'Entregado',
	result: {
		clear: 'Todo estuvo dentro de su ventana.',
		findings: 'Hay hallazgos.',
		'safety-stop': 'Paro de seguridad: está por encima de todo lo demás de la hoja.'
	},
	kept: (kept: number, amber: number, of: number) =>
		`${kept} de ${of} reglas cumplidas${amber ? `, ${amber} en ámbar` : ''}. El crédito parcial solo existe en la práctica.`,
	woven: 'Qué traía escondido esta orden',
	wovenNone: 'Esta orden no traía nada escondido: era un trabajo común.',
	askedRight: {
		ask: 'Este trabajo no podía empezar sin preguntar.',
		refuse: 'Este trabajo había que rechazarlo.'
	},
	again: 'Otra orden',
	lookCloser: 'Mirar de cerca',
	view: {
		plain: 'como cuelga ahí',
		raking: 'con luz rasante, relieve exagerado',
		loupe: 'con lupa, relieve exagerado',
		section: 'en corte, alturas muy aumentadas'
	},
	stationOf: (station: string) => `Estación: ${station}`
} satisfies typeof en;

export const practice = { en, es };

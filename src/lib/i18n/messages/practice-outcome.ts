const en = {
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
	again: 'Another ticket'
};

const es = {
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
	again: 'Otra orden'
} satisfies typeof en;

/** Words of a practice drill that was handed in. */
export const practiceOutcome = { en, es };

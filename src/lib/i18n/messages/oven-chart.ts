const en = {
	title: 'Oven chart of this load',
	/** Marked for whoever looks at it alone: no load of the shop. */
	demo: 'Demo chart, made up for this ticket.',
	time: 'Minutes from closing the door',
	temperature: (unit: string) => `Temperature, ${unit}`,
	traces: {
		heaviest: 'heaviest section',
		thinnest: 'thinnest place',
		air: 'oven display (air)'
	},
	lines: { heaviest: 'solid', thinnest: 'dashed', air: 'dotted' },
	legend: 'Lines',
	doorOpen: 'door open',
	divisions: (time: string, temperature: string) => `Smallest divisions: ${time} min and ${temperature}.`,
	asTable: 'The chart as a table',
	tableCaption: (unit: string, every: string) => `Readings in ${unit}, every ${every} min`,
	head: { time: 'min', door: 'Door' },
	open: 'open',
	shut: 'shut'
};

const es = {
	title: 'Registro del horno de esta carga',
	demo: 'Registro de demostración, inventado para esta orden.',
	time: 'Minutos desde que se cierra la puerta',
	temperature: (unit: string) => `Temperatura, ${unit}`,
	traces: {
		heaviest: 'sección más pesada',
		thinnest: 'lugar más delgado',
		air: 'pantalla del horno (aire)'
	},
	lines: { heaviest: 'continua', thinnest: 'discontinua', air: 'punteada' },
	legend: 'Líneas',
	doorOpen: 'puerta abierta',
	divisions: (time: string, temperature: string) => `Divisiones más chicas: ${time} min y ${temperature}.`,
	asTable: 'El registro como tabla',
	tableCaption: (unit: string, every: string) => `Lecturas en ${unit}, cada ${every} min`,
	head: { time: 'min', door: 'Puerta' },
	open: 'abierta',
	shut: 'cerrada'
} satisfies typeof en;

export const ovenChart = { en, es };

const en = {
	yours: 'Your value',
	window: 'The window',
	away: 'How far off',
	rule: 'Rule',
	why: 'Why',
	outcome: 'What would happen',
	next: 'Next',
	todo: {
		stop: 'Stop. Nothing starts until this is right.',
		empty: 'Fill this in.',
		low: 'Bring it up into the window.',
		high: 'Bring it down into the window.',
		missing: 'Add what is missing.',
		surplus: 'Take out what does not belong.',
		wrong: 'Change it to what the window says.'
	},
	lesson: 'Read the line in the lesson',
	comesOut: (defect: string) => `What comes out of the oven: ${defect}`,
	derivation: 'How this number came about',
	formula: 'Formula',
	source: 'Source',
	nothing: 'nothing entered',
	origin: {
		published: 'published text',
		handbook: 'handbook',
		paper: 'research paper',
		'common-practice': 'common practice in the trade',
		shop: 'value set by this shop',
		'data-sheet': 'the coating’s data sheet',
		customer: 'the customer’s order',
		arithmetic: 'arithmetic',
		example: 'invented for this example',
		answer: 'what was set'
	},
	read: (what: string) => `read in ${what}`,
	memory: 'from memory, not checked against a text',
	editable: 'your lead can change it in the shop values'
};

const es = {
	yours: 'Su valor',
	window: 'La ventana',
	away: 'Cuánto se aparta',
	rule: 'Regla',
	why: 'Por qué',
	outcome: 'Qué pasaría',
	next: 'Ahora',
	todo: {
		stop: 'Pare. Nada empieza hasta que esto esté bien.',
		empty: 'Llene este dato.',
		low: 'Súbalo hasta la ventana.',
		high: 'Bájelo hasta la ventana.',
		missing: 'Agregue lo que falta.',
		surplus: 'Quite lo que no va.',
		wrong: 'Cámbielo por lo que dice la ventana.'
	},
	lesson: 'Lea la línea en la lección',
	comesOut: (defect: string) => `Lo que sale del horno: ${defect}`,
	derivation: 'De dónde sale este número',
	formula: 'Fórmula',
	source: 'Fuente',
	nothing: 'sin dato',
	origin: {
		published: 'texto publicado',
		handbook: 'manual técnico',
		paper: 'artículo de investigación',
		'common-practice': 'práctica común del oficio',
		shop: 'valor fijado por este taller',
		'data-sheet': 'la hoja técnica del recubrimiento',
		customer: 'el pedido del cliente',
		arithmetic: 'aritmética',
		example: 'inventado para este ejemplo',
		answer: 'lo que se ajustó'
	},
	read: (what: string) => `leído en ${what}`,
	memory: 'de memoria, sin cotejar con un texto',
	editable: 'su responsable puede cambiarlo en los valores del taller'
} satisfies typeof en;

export const findings = { en, es };

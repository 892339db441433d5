const en = {
	title: 'At the oven door',
	model:
		'Teaching model: it shows which way each setting pushes the film and how one thing leads to another. It does not predict a real part. The witness panel does.',
	stops: 'Safety stop: this overrides everything below',
	defects: 'What comes out',
	noDefects: 'No defect comes out of this.',
	notStarted: 'This job may not start as it stands, so there is no film to measure.',
	measures: 'What is found of the film and the part',
	head: { measure: 'Measure', found: 'Found', wanted: 'Wanted', stands: 'How it stands' },
	unset: 'Left empty, so nothing is said of it:',
	because: 'From',
	derivation: 'How this number came about',
	lesson: (rule: string) => `Lesson: ${rule}`,
	severity: { 1: 'slight', 2: 'clear', 3: 'severe' },
	way: { low: 'too low', high: 'too high', wrong: 'not as the rule says' },
	harm: {
		breathing: 'what people breathe',
		skin: 'skin and eyes',
		fire: 'fire and explosion',
		pressure: 'air and grit under pressure'
	},
	measure: {
		'film-built': 'Dry film built',
		wetness: 'Wetness at the part',
		'solvent-left': 'Solvent left at the oven door, part of the wet film',
		'cure-reached': 'Cure reached, as time at the middle of the cure window',
		'part-heat': 'Hottest the parts get',
		key: 'Key for the film',
		gloss: 'Gloss',
		adhesion: 'Adhesion'
	},
	low: {
		'film-built': 'too thin',
		wetness: 'too dry',
		'solvent-left': 'too little',
		'cure-reached': 'too little cured',
		'part-heat': 'too cool',
		key: 'too shallow',
		gloss: 'off',
		adhesion: 'too weak'
	},
	high: {
		'film-built': 'too thick',
		wetness: 'too wet',
		'solvent-left': 'too much',
		'cure-reached': 'too much cured',
		'part-heat': 'too hot',
		key: 'too deep',
		gloss: 'too high',
		adhesion: 'too strong'
	},
	asWanted: 'as wanted',
	stands: {
		1: (how: string) => `slightly ${how}`,
		2: (how: string) => `clearly ${how}`,
		3: (how: string) => `far ${how}`
	},
	beyondLaw: 'outside what can be worked out',
	byEye: 'no number: seen and tested'
};

const es = {
	title: 'A la puerta del horno',
	model:
		'Modelo didáctico: muestra hacia dónde empuja cada ajuste la película y cómo una cosa lleva a otra. No predice una pieza real. Eso lo hace el panel testigo.',
	stops: 'Paro de seguridad: esto manda sobre todo lo de abajo',
	defects: 'Qué sale',
	noDefects: 'De esto no sale ningún defecto.',
	notStarted: 'Este trabajo no puede empezar como viene, así que no hay película que medir.',
	measures: 'Qué se encuentra en la película y en la pieza',
	head: { measure: 'Medida', found: 'Encontrado', wanted: 'Pedido', stands: 'Cómo queda' },
	unset: 'Quedó vacío, por eso no se dice nada de ello:',
	because: 'Viene de',
	derivation: 'De dónde sale este número',
	lesson: (rule: string) => `Lección: ${rule}`,
	severity: { 1: 'leve', 2: 'visible', 3: 'grave' },
	way: { low: 'demasiado bajo', high: 'demasiado alto', wrong: 'no como dice la regla' },
	harm: {
		breathing: 'lo que la gente respira',
		skin: 'piel y ojos',
		fire: 'fuego y explosión',
		pressure: 'aire y abrasivo a presión'
	},
	measure: {
		'film-built': 'Película seca obtenida',
		wetness: 'Humedad de la película en la pieza',
		'solvent-left': 'Solvente que queda al entrar al horno, parte de la película húmeda',
		'cure-reached': 'Curado alcanzado, como tiempo en el centro de la ventana de curado',
		'part-heat': 'Lo más caliente que llegan a estar las piezas',
		key: 'Anclaje para la película',
		gloss: 'Brillo',
		adhesion: 'Adhesión'
	},
	low: {
		'film-built': 'delgada',
		wetness: 'seca',
		'solvent-left': 'escaso',
		'cure-reached': 'falto de curado',
		'part-heat': 'fría',
		key: 'bajo',
		gloss: 'alterado',
		adhesion: 'débil'
	},
	high: {
		'film-built': 'gruesa',
		wetness: 'mojada',
		'solvent-left': 'excesivo',
		'cure-reached': 'pasado de curado',
		'part-heat': 'caliente',
		key: 'profundo',
		gloss: 'alto',
		adhesion: 'fuerte'
	},
	asWanted: 'como se pide',
	stands: {
		1: (how: string) => `algo ${how}`,
		2: (how: string) => `claramente ${how}`,
		3: (how: string) => `muy ${how}`
	},
	beyondLaw: 'fuera de lo que se puede calcular',
	byEye: 'sin número: se ve y se prueba'
} satisfies typeof en;

export const outcome = { en, es };

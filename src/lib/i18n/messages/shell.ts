const en = {
	skip: 'Skip to the work',
	screens: 'Screens',
	screen: {
		today: 'Today',
		lessons: 'Lessons',
		practice: 'Practice',
		proving: 'Proving',
		'bench-card': 'Bench card',
		rules: 'Rules',
		crew: 'Crew board',
		incidents: 'Incidents',
		record: 'Record',
		shop: 'Shop'
	},
	signedIn: 'At this bench',
	nobody: 'Nobody signed in',
	changePerson: 'Change person',
	signIn: 'Sign in',
	language: 'Language',
	inThisLanguage: 'English',
	showIn: { us: 'Show psi, °F, mil', metric: 'Show bar, °C, µm' },
	noSuchUnits: 'Choose US or metric units with the button at the top of a page.',
	demo: 'Demo shop: the people, jobs and data here are invented.',
	titled: (screen: string, shop: string) => `${screen} · ${shop}`,
	problem: {
		401: { title: 'Sign in first', help: 'This page belongs to a person. Sign in and open it again.' },
		403: { title: 'Not open to you', help: 'Your part in the shop does not include this page.' },
		404: { title: 'Nothing here', help: 'There is no page at this address. It may have been mistyped.' },
		500: {
			title: 'The tool failed',
			help: 'This is a fault in the tool, not something you did. Only what a page said was saved is saved. Tell your lead the time and the page.'
		},
		other: { title: 'That did not work', help: 'Go back and try again, or ask your lead.' }
	},
	toStart: 'Back to the start'
};

const es = {
	skip: 'Ir al trabajo',
	screens: 'Pantallas',
	screen: {
		today: 'Hoy',
		lessons: 'Lecciones',
		practice: 'Ejercicios',
		proving: 'Comprobación',
		'bench-card': 'Tarjeta de puesto',
		rules: 'Reglas',
		crew: 'Tablero del equipo',
		incidents: 'Incidentes',
		record: 'Registro',
		shop: 'Taller'
	},
	signedIn: 'En este puesto',
	nobody: 'Nadie ha iniciado sesión',
	changePerson: 'Cambiar de persona',
	signIn: 'Iniciar sesión',
	language: 'Idioma',
	inThisLanguage: 'Español',
	showIn: { us: 'Mostrar psi, °F, mil', metric: 'Mostrar bar, °C, µm' },
	noSuchUnits: 'Elija unidades de EE. UU. o métricas con el botón de arriba.',
	demo: 'Taller de demostración: las personas, los trabajos y los datos son inventados.',
	titled: (screen: string, shop: string) => `${screen} · ${shop}`,
	problem: {
		401: {
			title: 'Primero inicie sesión',
			help: 'Esta página pertenece a una persona. Inicie sesión y ábrala otra vez.'
		},
		403: { title: 'No está abierta para usted', help: 'Su función en el taller no incluye esta página.' },
		404: {
			title: 'Aquí no hay nada',
			help: 'No existe una página en esta dirección. Quizá se escribió mal.'
		},
		500: {
			title: 'Falló la herramienta',
			help: 'Es una falla de la herramienta, no algo que usted hizo. Solo está guardado lo que una página dijo que guardó. Avise a su responsable la hora y la página.'
		},
		other: { title: 'Eso no funcionó', help: 'Regrese e intente otra vez, o pregunte a su responsable.' }
	},
	toStart: 'Volver al inicio'
} satisfies typeof en;

export const shell = { en, es };

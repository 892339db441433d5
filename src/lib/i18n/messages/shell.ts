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
	titled: (screen: string, shop: string) => `${screen} · ${shop}`
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
	titled: (screen: string, shop: string) => `${screen} · ${shop}`
} satisfies typeof en;

export const shell = { en, es };

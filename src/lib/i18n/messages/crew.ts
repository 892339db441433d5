const en = {
	title: 'Crew board',
	intro: 'Who is signed for what, in order of names. The board compares nobody.',
	reports: 'Which rules go wrong',
	waits: 'Who waits for whom',
	byName: 'In order of names',
	nobodyWaits: 'Nobody waits for a practical or a signature.',
	person: 'Person',
	what: 'Waits for',
	competency: 'Competency',
	by: 'By',
	waitsFor: {
		practical: 'a practical',
		signature: 'a signature',
		'refresher-signature': 'a signature for the refresher',
		continuity: 'confirmation that they still do this work',
		'suspension-review': 'a look at the suspension'
	},
	racks: 'Racks',
	safety: 'Safety:',
	sheet: 'Sign-off sheet'
};

const es = {
	title: 'Tablero del equipo',
	intro: 'Quién está autorizado en qué, por orden de nombre. El tablero no compara a nadie.',
	reports: 'Qué reglas salen mal',
	waits: 'Quién espera a quién',
	byName: 'Por orden de nombre',
	nobodyWaits: 'Nadie espera una práctica supervisada ni una firma.',
	person: 'Persona',
	what: 'Espera',
	competency: 'Competencia',
	by: 'A más tardar',
	waitsFor: {
		practical: 'una práctica supervisada',
		signature: 'una firma',
		'refresher-signature': 'una firma por el repaso',
		continuity: 'confirmación de que sigue haciendo este trabajo',
		'suspension-review': 'que se revise la suspensión'
	},
	racks: 'Paneles',
	safety: 'Seguridad:',
	sheet: 'Hoja de autorización'
} satisfies typeof en;

export const crew = { en, es };

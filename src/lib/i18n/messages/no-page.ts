const en = {
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

/** Words where a page cannot be shown. */
export const noPage = { en, es };

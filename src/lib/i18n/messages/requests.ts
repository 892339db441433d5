const en = {
	toStart: 'To the start page',
	status: {
		400: {
			title: 'This could not be read',
			help: 'What arrived is not a complete form. Nothing was saved. Go back, load the page again and send it once more.'
		},
		403: {
			title: 'Sent from another page',
			help: 'This form did not come from this program’s own page, so nothing was saved. Open the page here and send it again.'
		},
		404: {
			title: 'Nothing here',
			help: 'There is no page and no action at this address. Nothing was saved.'
		},
		405: { title: 'Not answered here', help: 'This address only shows a page. Nothing was saved.' },
		413: { title: 'Too large', help: 'What was sent is larger than this program takes. Nothing was saved.' },
		415: { title: 'Not a form', help: 'This address takes forms only. Nothing was saved.' },
		421: {
			title: 'Unknown address',
			help: 'This program does not answer to the name in the address bar. Use an address it printed when it started, or have that name added to WITNESS_HOSTS.'
		},
		500: {
			title: 'The tool failed',
			help: 'This is a fault in the tool, not something you did. Only what a page said was saved is saved.'
		}
	},
	closedBook: {
		title: 'The book is closed',
		help: 'You have a proving drill open. Until you hand it in or give it up, your sign-in gets the ticket, the data sheets, the safety data and the shop values of a real bench. Rules, lessons, practice and the bench card open again afterwards.',
		back: 'Back to the proving drill'
	}
};

const es = {
	toStart: 'A la página de inicio',
	status: {
		400: {
			title: 'No se pudo leer',
			help: 'Lo que llegó no es un formulario completo. No se guardó nada. Regrese, cargue la página otra vez y envíelo de nuevo.'
		},
		403: {
			title: 'Enviado desde otra página',
			help: 'Este formulario no viene de una página de este programa, así que no se guardó nada. Abra la página aquí y envíelo otra vez.'
		},
		404: {
			title: 'Aquí no hay nada',
			help: 'En esta dirección no hay ninguna página ni acción. No se guardó nada.'
		},
		405: {
			title: 'Aquí no se recibe nada',
			help: 'Esta dirección solo muestra una página. No se guardó nada.'
		},
		413: {
			title: 'Demasiado grande',
			help: 'Lo enviado es más grande de lo que recibe este programa. No se guardó nada.'
		},
		415: { title: 'No es un formulario', help: 'Esta dirección solo recibe formularios. No se guardó nada.' },
		421: {
			title: 'Dirección desconocida',
			help: 'Este programa no responde al nombre de la barra de direcciones. Use una dirección de las que mostró al iniciar, o pida que se agregue ese nombre a WITNESS_HOSTS.'
		},
		500: {
			title: 'Falló la herramienta',
			help: 'Es una falla de la herramienta, no algo que usted hizo. Solo está guardado lo que una página dijo que guardó.'
		}
	},
	closedBook: {
		title: 'El libro está cerrado',
		help: 'Usted tiene abierto un ejercicio de comprobación. Hasta que lo entregue o lo abandone, su sesión solo recibe la orden, las hojas técnicas, los datos de seguridad y los valores del taller, como en un puesto real. Las reglas, las lecciones, la práctica y la tarjeta de puesto se abren de nuevo después.',
		back: 'Volver al ejercicio de comprobación'
	}
} satisfies typeof en;

/** Requests that never reach a screen: the pages that say so. */
export const requests = { en, es };

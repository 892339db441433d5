const en = {
	title: 'People',
	add: 'Add a person',
	caption: 'Everybody in the record, by name',
	name: 'Name',
	roles: 'Parts in the shop',
	lang: 'Language',
	langs: { en: 'English', es: 'Spanish' },
	secretSet: 'Secret set on',
	noSecret: 'no secret yet: cannot sign in',
	access: 'Access',
	auditorUntil: (date: string) => `may read until ${date}`,
	auditorClosed: 'closed',
	noRole: 'none',
	all: 'All people',

	addIntro:
		'A new person starts training in all six competencies and in safety at once; an auditor only reads.',
	nameHint: 'As it should stand on sign-off sheets. It is kept apart from the journal and can be erased.',
	langHint: 'The language their pages and printed sheets are in; they can switch anywhere.',
	rolesHint:
		'A trainee proves skills. A supervisor watches, records and signs. A lead does that too and sets what is on these pages. An auditor reads for a limited time and has no other part.',
	kind: {
		pin: 'A PIN of 4 to 8 digits for somebody who is a trainee only.',
		passphrase: 'A passphrase of 12 characters or more for everybody who signs, leads or audits.'
	},
	secretHint:
		'Best typed by the person at this keyboard. If you type it, tell nobody else and have them choose a new one here soon.',
	secret: 'PIN or passphrase',
	again: 'The same again',
	rolesMissing: 'Choose at least one.',
	auditorOnly: 'An auditor has no other part: add a second entry for somebody who works here too.',
	notAlike: 'The two entries differ.',
	addGo: 'Add',

	changeRoles: 'Change the parts',
	changeRolesHint:
		'Whoever begins to sign needs a passphrase in place of a PIN, and the other way round: type the new secret below in that case. Otherwise leave it empty.',
	newSecretNeeded: {
		pin: 'With these parts a PIN takes the place of the passphrase: choose one.',
		passphrase: 'With these parts a passphrase takes the place of the PIN: choose one.'
	},
	auditorStays: 'An auditor stays an auditor, and nobody who works here becomes one.',
	rolesGo: 'Save the parts',
	setSecret: 'Set a new secret',
	setSecretHint:
		'For a secret that was forgotten or seen. It ends every sign-in of this person, yours too if this is you.',
	setSecretGo: 'Save the secret',
	openAccess: 'Open the record to this auditor',
	until: 'Until the end of',
	untilHint: 'After that day the access ends by itself. It can be opened again.',
	untilTooLong: (days: string) => `At most ${days} days ahead.`,
	openGo: 'Open',
	erase: 'Erase this person',
	done: {
		added: 'The person was added.',
		roles: 'The parts were saved.',
		secret: 'The new secret was saved.',
		opened: 'The access was opened.',
		erased: 'The person was erased.'
	},

	eraseTitle: (name: string) => `Erase ${name}`,
	eraseDoes: 'What this does',
	eraseDoesList: [
		'The name, and every free text written about this person, is deleted for good.',
		'The PIN or passphrase is deleted, and every sign-in ends now.',
		'Screens and new prints show “erased on” and the day in place of the name.'
	],
	eraseDoesNot: 'What it does not do',
	eraseDoesNotList: [
		'The entries of the journal stay, with an id in place of a person: what was proven and signed can still be checked.',
		'Paper, exports and backups made before still hold the name.',
		'Text somebody typed elsewhere, in the title of a data sheet for example, is not searched.',
		'It cannot be taken back. Who comes back later is added as a new person.'
	],
	eraseConfirm: 'I have read this, and mean this person.',
	eraseConfirmMissing: 'Tick this to erase.',
	eraseGo: 'Erase for good',
	eraseBack: 'Keep this person'
};

const es = {
	title: 'Personas',
	add: 'Agregar una persona',
	caption: 'Todas las personas del registro, por nombre',
	name: 'Nombre',
	roles: 'Funciones en el taller',
	lang: 'Idioma',
	langs: { en: 'Inglés', es: 'Español' },
	secretSet: 'Acceso fijado el',
	noSecret: 'todavía sin PIN ni frase: no puede iniciar sesión',
	access: 'Consulta',
	auditorUntil: (date: string) => `puede leer hasta el ${date}`,
	auditorClosed: 'cerrada',
	noRole: 'ninguna',
	all: 'Todas las personas',

	addIntro:
		'Una persona nueva empieza de inmediato la formación en las seis competencias y en seguridad; un auditor solo lee.',
	nameHint:
		'Como debe aparecer en las hojas de autorización. Se guarda aparte del registro y se puede borrar.',
	langHint: 'El idioma de sus páginas y hojas impresas; se puede cambiar en cualquier parte.',
	rolesHint:
		'Un aprendiz demuestra habilidades. Un supervisor observa, anota y firma. Un responsable también, y además fija lo que está en estas páginas. Un auditor lee por un tiempo limitado y no tiene otra función.',
	kind: {
		pin: 'Un PIN de 4 a 8 dígitos para quien solo es aprendiz.',
		passphrase: 'Una frase de acceso de 12 caracteres o más para quien firma, dirige o audita.'
	},
	secretHint:
		'Lo mejor es que la persona lo escriba en este teclado. Si lo escribe usted, no se lo diga a nadie más y pídale que elija otro aquí pronto.',
	secret: 'PIN o frase de acceso',
	again: 'Lo mismo otra vez',
	rolesMissing: 'Elija por lo menos una.',
	auditorOnly: 'Un auditor no tiene otra función: agregue otra entrada para quien además trabaja aquí.',
	notAlike: 'Los dos datos son distintos.',
	addGo: 'Agregar',

	changeRoles: 'Cambiar las funciones',
	changeRolesHint:
		'Quien empieza a firmar necesita una frase de acceso en lugar de un PIN, y al revés: en ese caso escriba abajo el nuevo. Si no, déjelo vacío.',
	newSecretNeeded: {
		pin: 'Con estas funciones un PIN reemplaza a la frase de acceso: elija uno.',
		passphrase: 'Con estas funciones una frase de acceso reemplaza al PIN: elija una.'
	},
	auditorStays: 'Un auditor sigue siendo auditor, y nadie que trabaje aquí pasa a serlo.',
	rolesGo: 'Guardar las funciones',
	setSecret: 'Fijar otro PIN o frase',
	setSecretHint:
		'Para uno que se olvidó o que alguien vio. Cierra todas las sesiones de esta persona, también la suya si es usted.',
	setSecretGo: 'Guardar el acceso',
	openAccess: 'Abrir el registro a este auditor',
	until: 'Hasta el final del',
	untilHint: 'Después de ese día la consulta termina sola. Se puede abrir otra vez.',
	untilTooLong: (days: string) => `Como máximo ${days} días por adelantado.`,
	openGo: 'Abrir',
	erase: 'Borrar a esta persona',
	done: {
		added: 'La persona quedó agregada.',
		roles: 'Las funciones quedaron guardadas.',
		secret: 'El nuevo acceso quedó guardado.',
		opened: 'La consulta quedó abierta.',
		erased: 'La persona quedó borrada.'
	},

	eraseTitle: (name: string) => `Borrar a ${name}`,
	eraseDoes: 'Qué hace esto',
	eraseDoesList: [
		'El nombre y todo texto libre escrito sobre esta persona se eliminan para siempre.',
		'Se elimina su PIN o frase de acceso y se cierran ahora todas sus sesiones.',
		'Las pantallas y las impresiones nuevas muestran «borrado el» y el día en lugar del nombre.'
	],
	eraseDoesNot: 'Qué no hace',
	eraseDoesNotList: [
		'Las líneas del registro quedan, con una clave en lugar de la persona: lo demostrado y firmado se puede seguir verificando.',
		'El papel, las exportaciones y las copias de antes todavía tienen el nombre.',
		'No se busca en textos escritos en otra parte, por ejemplo en el título de una hoja técnica.',
		'No se puede deshacer. Quien vuelva más tarde se agrega como persona nueva.'
	],
	eraseConfirm: 'Leí esto y me refiero a esta persona.',
	eraseConfirmMissing: 'Marque esto para borrar.',
	eraseGo: 'Borrar para siempre',
	eraseBack: 'Conservar a esta persona'
} satisfies typeof en;

export const shopPeople = { en, es };

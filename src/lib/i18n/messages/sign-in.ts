import { format } from '../format';

const wait = (
	seconds: number,
	lang: 'en' | 'es',
	words: Record<'second' | 'minute', { one: string; other: string }>
) => {
	const [count, unit] = seconds < 60 ? [seconds, words.second] : [Math.ceil(seconds / 60), words.minute];
	return `${count} ${format.plural(count, lang, unit)}`;
};

const en = {
	title: 'Sign in',
	who: 'Who is at this bench?',
	none: 'Nobody can sign in here yet.',
	notYou: 'Someone else',
	pin: 'PIN',
	passphrase: 'Passphrase',
	pinHint: '4 to 8 digits',
	passphraseHint: '12 characters or more, spaces count',
	forget: 'Forgotten it? Your lead can give you a new one.',
	go: 'Sign in',
	wrong: 'That is not the secret of this person. Nothing was opened.',
	empty: 'Type the PIN or the passphrase.',
	unknown: 'Choose a person from the list.',
	wait: (seconds: number) =>
		`Too many wrong tries. The next one is looked at in ${wait(seconds, 'en', {
			second: { one: 'second', other: 'seconds' },
			minute: { one: 'minute', other: 'minutes' }
		})}.`,
	idle: (minutes: number) =>
		`Signed out by itself after ${minutes} ${format.plural(minutes, 'en', { one: 'minute', other: 'minutes' })} without use.`,
	signedOut: 'Signed out.',
	signOut: 'Sign out',
	demo: 'Demo people and their secrets',
	demoNote: 'Invented people. Anyone can read these secrets here: never use them for a real shop.',
	person: 'Person',
	roles: 'Part in the shop',
	secret: 'Secret'
};

const es = {
	title: 'Iniciar sesión',
	who: '¿Quién está en este puesto?',
	none: 'Todavía nadie puede iniciar sesión aquí.',
	notYou: 'Otra persona',
	pin: 'PIN',
	passphrase: 'Frase de acceso',
	pinHint: 'De 4 a 8 dígitos',
	passphraseHint: '12 caracteres o más; los espacios cuentan',
	forget: '¿La olvidó? Su responsable puede darle una nueva.',
	go: 'Iniciar sesión',
	wrong: 'Esa no es la clave de esta persona. No se abrió nada.',
	empty: 'Escriba el PIN o la frase de acceso.',
	unknown: 'Elija a una persona de la lista.',
	wait: (seconds: number) =>
		`Demasiados intentos equivocados. El siguiente se revisa en ${wait(seconds, 'es', {
			second: { one: 'segundo', other: 'segundos' },
			minute: { one: 'minuto', other: 'minutos' }
		})}.`,
	idle: (minutes: number) =>
		`La sesión se cerró sola tras ${minutes} ${format.plural(minutes, 'es', { one: 'minuto', other: 'minutos' })} sin uso.`,
	signedOut: 'Sesión cerrada.',
	signOut: 'Cerrar sesión',
	demo: 'Personas de demostración y sus claves',
	demoNote: 'Personas inventadas. Cualquiera puede leer aquí estas claves: nunca las use en un taller real.',
	person: 'Persona',
	roles: 'Función en el taller',
	secret: 'Clave'
} satisfies typeof en;

/** Signing in, changing person and signing out. */
export const signIn = { en, es };

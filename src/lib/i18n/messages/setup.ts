const en = {
	title: 'Set up the shop',
	intro:
		'This is done once. It records the shop and its first lead, who signs in afterwards and adds everyone else.',
	code: 'One-time code',
	codeHint: 'It stands on the console of the PC where the program was started.',
	shop: 'Name of the shop',
	shopHint: 'As it should stand on printed records.',
	zone: 'Time zone',
	zoneHint: 'Days in the record are days in this time zone.',
	lead: 'Your name',
	leadHint: 'You become the first lead: you set shop values, add people and answer for the record.',
	passphrase: 'Passphrase',
	passphraseHint: '12 characters or more. Several unrelated words are easier to remember than signs.',
	again: 'Passphrase again',
	go: 'Set up',
	wrongCode: 'That is not the code on the console.',
	problem: {
		empty: 'Fill this in.',
		'not-alike': 'The two passphrases differ.',
		'wrong-zone': 'Not a time zone this PC knows, such as America/Mexico_City.',
		'pin-format': 'A PIN is 4 to 8 digits.',
		'pin-plain': 'Too easy to guess: not one digit repeated and not a run such as 1234.',
		'passphrase-short': 'Too short: 12 characters or more.',
		'passphrase-plain': 'Too easy to guess: use at least five different characters.',
		'too-long': 'At most 200 characters.'
	},
	refused: 'The record refused this. Nothing was saved.'
};

const es = {
	title: 'Preparar el taller',
	intro:
		'Se hace una sola vez. Registra el taller y a su primer responsable, quien luego inicia sesión y agrega a los demás.',
	code: 'Código de un solo uso',
	codeHint: 'Está en la consola de la computadora donde se inició el programa.',
	shop: 'Nombre del taller',
	shopHint: 'Como debe aparecer en los registros impresos.',
	zone: 'Zona horaria',
	zoneHint: 'Los días del registro son días en esta zona horaria.',
	lead: 'Su nombre',
	leadHint:
		'Usted será el primer responsable: fija los valores del taller, agrega personas y responde por el registro.',
	passphrase: 'Frase de acceso',
	passphraseHint: '12 caracteres o más. Varias palabras sin relación se recuerdan mejor que los signos.',
	again: 'Frase de acceso otra vez',
	go: 'Preparar',
	wrongCode: 'Ese no es el código de la consola.',
	problem: {
		empty: 'Complete este dato.',
		'not-alike': 'Las dos frases son distintas.',
		'wrong-zone': 'No es una zona horaria que esta computadora conozca, como America/Mexico_City.',
		'pin-format': 'Un PIN tiene de 4 a 8 dígitos.',
		'pin-plain': 'Muy fácil de adivinar: ni un dígito repetido ni una serie como 1234.',
		'passphrase-short': 'Muy corta: 12 caracteres o más.',
		'passphrase-plain': 'Muy fácil de adivinar: use al menos cinco caracteres distintos.',
		'too-long': '200 caracteres como máximo.'
	},
	refused: 'El registro no aceptó esto. No se guardó nada.'
} satisfies typeof en;

/** First visit: the shop and its first lead. `problem` also words the secrets set later, on other screens. */
export const setup = { en, es };

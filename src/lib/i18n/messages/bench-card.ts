const en = {
	title: 'Bench card',
	titled: (ticket: string) => `Bench card ${ticket}`,
	intro:
		'A real job of today, worked out by the same rules that drills are graded by. Enter what is on the paper and what you read and see now. The answer is a card to print and lay beside the work, or the questions that come first.',
	unkept: 'Nothing you enter here is kept: neither the job nor the card goes into the record.',
	empty: 'Only a line that says so may stay empty. Go and look: nothing is filled in for you.',
	noSheets:
		'The shop has no data sheet in force today, so there is nothing to work a job out with. Your lead adds them.',
	correct: 'Something has to be put right below. Nothing was worked out yet.',
	tampered: 'That form did not come from this page. Nothing was worked out.',

	notYoursTitle: 'Not open to you yet',
	notYours:
		'A bench card is for whoever the shop has signed for. Nobody has signed for you in any competency yet, or a signature was taken back.',
	notYoursNext:
		'Today says what is open for you and what is missing for a signature. Until then somebody signed works the job out.',
	toToday: 'To Today',

	room: {
		ticket: 'From the ticket',
		part: (line: number) => `Parts, line ${line}`,
		done: 'Done to the parts so far',
		weather: 'Read today',
		shelf: 'On the shelf',
		bench: 'Equipment as it is today',
		wearer: 'At the gun today'
	},
	roomHint: {
		ticket: 'As the customer’s paper has it.',
		part: 'Counted, measured and looked at on the receiving bench.',
		done: 'From the traveller, or from whoever did it.',
		weather: 'Where it will be sprayed, with the shop’s own instruments.',
		shelf: 'From the cans themselves.',
		bench: 'Looked at and read before work starts.',
		wearer: 'About whoever will spray. No medical detail, only whether it is valid.'
	},
	unchosen: 'Choose',
	addPart: 'One more part line',
	dropPart: (line: number) => `Take part line ${line} away`,
	work: 'Work it out',

	label: {
		ticketNumber: 'Ticket number',
		filmMin: 'Film on the drawing: lowest',
		filmMax: 'Film on the drawing: highest',
		name: 'What the part is called',
		length: 'Length',
		width: 'Width',
		height: 'Height',
		humid: 'Straight from a humid shelf, not dried',
		hardenerNone: 'one-part coating: none',
		blastedAgo: 'Blasted, how long ago',
		spot: (spot: number) => `Witness readings of the last batch: spot ${spot}`
	},
	hint: {
		film: 'Only where the drawing asks for a film; otherwise leave empty.',
		writtenCap: 'Only where the customer gives one. May stay empty.',
		length: 'The long side. Ring: its thickness along the axis. Bracket: along the bend.',
		width: 'Tube, bar and ring: the outer diameter. Bracket: one leg.',
		height: 'Plate: its thickness. Tube, bar and ring: the outer diameter again. Bracket: the other leg.',
		thickness: 'Sheet or wall. Bar: its diameter. Ring: from the bore to the outside.',
		tempered: 'Only for hardened parts whose paper says so. May stay empty.',
		features: 'Tick what the part has. No tick: it has none.',
		masked: 'Tick what the customer’s list names. No tick: none.',
		fitted: 'Tick what is still in or on the part. No tick: nothing.',
		blastedAgo: 'Only where an earlier shift has blasted them. May stay empty.',
		residueLoops: 'A whole number. May stay empty where no bake-out has shown residue.',
		spot: 'Three readings, parted by semicolons: 21; 22; 20 µm. May stay empty.',
		hardenerExpires: 'Two-part coatings only; otherwise leave empty.',
		leftOver: 'Only where there is some. May stay empty.',
		media: 'Tick what is in the cabinet or beside it. No tick: none.',
		compressor: 'May stay empty; the card then says nothing of the nozzle.',
		nozzles:
			'Tick what is on the shelf. No tick: nobody has looked, and the card says nothing of the nozzle.',
		strainers: 'All in stock, parted by semicolons: 75; 125; 190 µm. May stay empty where there is none.',
		handle: 'The gauge at the handle when the test cap shows the pressure wanted at the cap.',
		breathing: 'Tick what is on hand and ready. No tick: none.',
		clearance: 'From the last smoke test of this booth.'
	},

	problem: {
		empty: 'This has to be filled in.',
		choose: 'Choose one from the list.',
		notOffered: 'Choose from the list only.',
		tooLong: (most: number) => `Too long: at most ${most} characters.`,
		noDay: 'A day of the calendar, as year-month-day.',
		noSheet: 'Choose a coating whose data sheet is in force today. Without one nothing can be said.',
		sheetSilent: (lines: string) => `The data sheet of this coating does not state this today: ${lines}.`,
		atLeast: (least: string) => `At least ${least}: below that there is no such thing in a shop like this.`,
		atMost: (most: string) => `At most ${most}: above that there is no such thing in a shop like this.`,
		outside: 'No shop is like that. Check number and unit.',
		readings: (count: number) => `Exactly ${count} readings.`,
		filmUnsaid: 'Say above that the drawing asks for a film, or leave this empty.',
		filmOrder: 'The highest cannot be below the lowest.',
		maskedMissing: (faces: string) => `On the masking list, but not among the faces of the part: ${faces}.`,
		twoPart: 'The coating chosen has two parts: say this of its hardener.',
		onePart: 'The coating chosen has one part and no hardener. Leave this empty, or choose the other coating.'
	},

	refusedTitle: 'No card for this job as it stands',
	refused: {
		ask: 'There is something to ask before this job may start. No setting is given until it is answered.',
		refuse: 'This job is not done here as it stands. No setting is given.'
	},
	why: 'Why',
	toAsk: 'To be asked',
	whom: {
		material: 'the customer, through your lead',
		heat: 'the customer, through your lead: a cooler coating, or a written limit the part can take',
		disassembly: 'the customer: who takes it out and puts it back',
		cavity: 'the customer, through your lead: how it is opened and vented',
		'old-coating': 'the customer, through your lead: what it is and who takes it off',
		plating: 'the customer, through your lead: it may hold hexavalent chromium or cadmium',
		'film-basis': 'the customer: per side, or in total',
		'film-window': 'the customer and the maker of the coating, through your lead',
		adhesion: 'the maker of the coating, through your lead',
		fire: 'your lead: this shop’s cabinet is not for it',
		conflict: 'your lead, naming both limits'
	},
	conflicts: 'Limits that cannot both be met',
	authority: 'Whose word',
	change: 'Change the job',
	afterAnswer: 'When it is answered, change the job and work it out again.',

	forDay: 'For',
	workedOutBy: 'Worked out for',
	workedOutAt: 'Worked out at',
	parts: 'Parts',
	sheet: 'Data sheet',
	revision: (revision: number, from: string) => `revision ${revision}, numbers of ${from}`,
	engine: 'Rules',
	values: 'Shop values',
	printHow: 'Print this page: one sheet, A4 or Letter.',
	otherLanguage: 'En español',
	otherUnits: { us: 'In psi, °F, mil', metric: 'In bar, °C, µm' },

	asLead: 'as lead',
	given: { alone: 'alone', supervised: 'supervised work', none: 'not in your scope' },
	supervised: 'SUPERVISED WORK',
	supervisedFor: (station: string, because: string) => `${station}: ${because}`,
	supervisedMeans: 'Only while somebody signed for it watches.',
	notYourScope: (station: string) =>
		`Not in your scope. Somebody signed for ${station.toLowerCase()} sets this; ask your supervisor who.`,
	safetyHolds: 'What stands here is safety, and holds for everybody:',
	nothing: 'nothing',
	how: 'How this number came about',

	cautions: 'Cautions',
	today: 'Not in order today',
	hazards: 'The coating',
	seeSds: 'read its safety data sheet',
	gaveWayTitle: 'Gave way to a stronger word',
	order: 'Order of authority',
	word: {
		law: 'law',
		'safety-data-sheet': 'SDS',
		'part-limit': 'part',
		customer: 'drawing',
		'data-sheet': 'sheet',
		shop: 'shop',
		tool: 'tool'
	},
	marks: 'How to read it',
	mark: {
		published: 'text',
		handbook: 'handbook',
		paper: 'research',
		'common-practice': 'practice',
		shop: 'shop',
		'data-sheet': 'sheet',
		customer: 'ticket',
		arithmetic: 'sum',
		example: 'invented',
		answer: 'set'
	},
	markMeans:
		'After a rule: whose word it is. Heavy bar: safety stop. In brackets, where a number comes from: [sheet] coating’s data sheet · [ticket] what was entered · [shop] set by this shop · [practice] common practice, a shop value the lead can change · [text], [handbook], [research] published · * from memory, not checked against a text',
	facts: 'What was entered',
	noRecord: 'A card is no record: nothing of it is kept, and it holds for this job on this day only.',
	signature: 'Set up by: signature, time',
	initials: 'Looked over by: initials',
	demo: 'DEMO: invented shop, people and data sheets. Not for work.',
	counted: (count: number, name: string) => `${count} × ${name}`
};

const es = {
	title: 'Tarjeta de puesto',
	titled: (ticket: string) => `Tarjeta de puesto ${ticket}`,
	intro:
		'Un trabajo real de hoy, resuelto con las mismas reglas que evalúan los ejercicios. Anote lo que dice el papel y lo que usted lee y ve ahora. La respuesta es una tarjeta para imprimir y tener junto al trabajo, o las preguntas que van primero.',
	unkept: 'Nada de lo que anote aquí se guarda: ni el trabajo ni la tarjeta entran al registro.',
	empty: 'Solo puede quedar vacío el renglón que lo dice. Vaya a ver: nada se llena por usted.',
	noSheets:
		'Hoy el taller no tiene ninguna hoja técnica vigente, así que no hay con qué resolver un trabajo. Las agrega su responsable.',
	correct: 'Hay que corregir algo abajo. Todavía no se resolvió nada.',
	tampered: 'Ese formulario no vino de esta página. No se resolvió nada.',

	notYoursTitle: 'Todavía no está abierta para usted',
	notYours:
		'La tarjeta de puesto es para quien el taller ha autorizado con firma. Nadie ha firmado todavía por usted en ninguna competencia, o la firma se retiró.',
	notYoursNext:
		'La hoja de hoy dice qué tiene abierto y qué falta para una firma. Mientras tanto, alguien autorizado resuelve el trabajo.',
	toToday: 'A la hoja de hoy',

	room: {
		ticket: 'De la orden',
		part: (line: number) => `Piezas, renglón ${line}`,
		done: 'Lo que ya se hizo a las piezas',
		weather: 'Lecturas de hoy',
		shelf: 'En el estante',
		bench: 'El equipo como está hoy',
		wearer: 'Quien aplica hoy'
	},
	roomHint: {
		ticket: 'Como está en el papel del cliente.',
		part: 'Contado, medido y visto en la mesa de recepción.',
		done: 'De la hoja de ruta, o de quien lo hizo.',
		weather: 'Donde se va a aplicar, con los instrumentos del taller.',
		shelf: 'De las latas mismas.',
		bench: 'Visto y leído antes de empezar.',
		wearer: 'De quien va a aplicar. Ningún dato médico, solo si está vigente.'
	},
	unchosen: 'Elija',
	addPart: 'Un renglón más de piezas',
	dropPart: (line: number) => `Quitar el renglón ${line} de piezas`,
	work: 'Resolver',

	label: {
		ticketNumber: 'Número de orden',
		filmMin: 'Película en el plano: mínima',
		filmMax: 'Película en el plano: máxima',
		name: 'Cómo se llama la pieza',
		length: 'Largo',
		width: 'Ancho',
		height: 'Alto',
		humid: 'Recién salida de un estante húmedo, sin secar',
		hardenerNone: 'recubrimiento de una parte: no lleva',
		blastedAgo: 'Granalladas, hace cuánto',
		spot: (spot: number) => `Lecturas del testigo del lote anterior: sitio ${spot}`
	},
	hint: {
		film: 'Solo si el plano pide una película; si no, déjelo vacío.',
		writtenCap: 'Solo si el cliente lo da. Puede quedar vacío.',
		length: 'El lado largo. Anillo: su espesor a lo largo del eje. Soporte: a lo largo del doblez.',
		width: 'Tubo, barra y anillo: el diámetro exterior. Soporte: un ala.',
		height: 'Placa: su espesor. Tubo, barra y anillo: otra vez el diámetro exterior. Soporte: la otra ala.',
		thickness: 'Lámina o pared. Barra: su diámetro. Anillo: del agujero hacia afuera.',
		tempered: 'Solo en piezas templadas cuyo papel lo dice. Puede quedar vacío.',
		features: 'Marque las que tiene la pieza. Sin marca: ninguna.',
		masked: 'Marque las que nombra la lista del cliente. Sin marca: ninguna.',
		fitted: 'Marque lo que la pieza todavía trae. Sin marca: nada.',
		blastedAgo: 'Solo si ya las granalló un turno anterior. Puede quedar vacío.',
		residueLoops: 'Un número entero. Puede quedar vacío si ningún desgasificado mostró residuo.',
		spot: 'Tres lecturas separadas con punto y coma: 21; 22; 20 µm. Puede quedar vacío.',
		hardenerExpires: 'Solo en recubrimientos de dos partes; si no, déjelo vacío.',
		leftOver: 'Solo si hay sobrante. Puede quedar vacío.',
		media: 'Marque los que están en la cabina o junto a ella. Sin marca: ninguno.',
		compressor: 'Puede quedar vacío; entonces la tarjeta no dice nada de la boquilla.',
		nozzles:
			'Marque las que hay en el estante. Sin marca: nadie ha visto, y la tarjeta no dice nada de la boquilla.',
		strainers:
			'Todos los que hay, separados con punto y coma: 75; 125; 190 µm. Puede quedar vacío si no hay.',
		handle: 'Lo que marca el mango cuando la boquilla de prueba marca la presión deseada.',
		breathing: 'Marque la que está a la mano y lista. Sin marca: ninguna.',
		clearance: 'De la última prueba de humo de esta cabina.'
	},

	problem: {
		empty: 'Complete este dato.',
		choose: 'Elija una opción de la lista.',
		notOffered: 'Elija solo de la lista.',
		tooLong: (most: number) => `Demasiado largo: ${most} caracteres como máximo.`,
		noDay: 'Un día del calendario, como año-mes-día.',
		noSheet: 'Elija un recubrimiento cuya hoja técnica esté vigente hoy. Sin ella no se puede decir nada.',
		sheetSilent: (lines: string) => `Hoy la hoja técnica de este recubrimiento no dice esto: ${lines}.`,
		atLeast: (least: string) => `Al menos ${least}: por debajo no existe en un taller como este.`,
		atMost: (most: string) => `Como máximo ${most}: por encima no existe en un taller como este.`,
		outside: 'Ningún taller es así. Revise el número y la unidad.',
		readings: (count: number) => `Exactamente ${count} lecturas.`,
		filmUnsaid: 'Diga arriba que el plano pide una película, o deje esto vacío.',
		filmOrder: 'La máxima no puede ser menor que la mínima.',
		maskedMissing: (faces: string) =>
			`Está en la lista de enmascarado, pero no entre las caras de la pieza: ${faces}.`,
		twoPart: 'El recubrimiento elegido es de dos partes: diga esto de su endurecedor.',
		onePart:
			'El recubrimiento elegido es de una parte y no lleva endurecedor. Déjelo vacío, o elija el otro recubrimiento.'
	},

	refusedTitle: 'No hay tarjeta para este trabajo como viene',
	refused: {
		ask: 'Hay algo que preguntar antes de empezar este trabajo. No se da ningún ajuste hasta tener respuesta.',
		refuse: 'Este trabajo no se hace aquí como viene. No se da ningún ajuste.'
	},
	why: 'Por qué',
	toAsk: 'Hay que preguntar',
	whom: {
		material: 'al cliente, por medio de su responsable',
		heat: 'al cliente, por medio de su responsable: otro recubrimiento menos caliente, o un límite por escrito que la pieza aguante',
		disassembly: 'al cliente: quién lo desmonta y quién lo vuelve a poner',
		cavity: 'al cliente, por medio de su responsable: cómo se abre y se ventila',
		'old-coating': 'al cliente, por medio de su responsable: qué es y quién lo quita',
		plating: 'al cliente, por medio de su responsable: puede tener cromo hexavalente o cadmio',
		'film-basis': 'al cliente: por cara o en total',
		'film-window': 'al cliente y al fabricante del recubrimiento, por medio de su responsable',
		adhesion: 'al fabricante del recubrimiento, por medio de su responsable',
		fire: 'a su responsable: la cabina de este taller no es para eso',
		conflict: 'a su responsable, nombrando los dos límites'
	},
	conflicts: 'Límites que no se pueden cumplir a la vez',
	authority: 'Quién lo manda',
	change: 'Cambiar el trabajo',
	afterAnswer: 'Cuando haya respuesta, cambie el trabajo y resuélvalo otra vez.',

	forDay: 'Para el',
	workedOutBy: 'Resuelta para',
	workedOutAt: 'Resuelta el',
	parts: 'Piezas',
	sheet: 'Hoja técnica',
	revision: (revision: number, from: string) => `revisión ${revision}, números del ${from}`,
	engine: 'Reglas',
	values: 'Valores del taller',
	printHow: 'Imprima esta página: una hoja, A4 o Carta.',
	otherLanguage: 'In English',
	otherUnits: { us: 'En psi, °F, mil', metric: 'En bar, °C, µm' },

	asLead: 'como responsable',
	given: { alone: 'por su cuenta', supervised: 'trabajo supervisado', none: 'fuera de su alcance' },
	supervised: 'TRABAJO SUPERVISADO',
	supervisedFor: (station: string, because: string) => `${station}: ${because}`,
	supervisedMeans: 'Solo con alguien autorizado mirando.',
	notYourScope: (station: string) =>
		`Fuera de su alcance. Esto lo ajusta alguien autorizado en ${station.toLowerCase()}; pregunte a su supervisor quién.`,
	safetyHolds: 'Lo que sigue es seguridad y vale para todos:',
	nothing: 'nada',
	how: 'De dónde sale este número',

	cautions: 'Precauciones',
	today: 'Hoy no está en orden',
	hazards: 'El recubrimiento',
	seeSds: 'lea su hoja de datos de seguridad',
	gaveWayTitle: 'Cedió ante una palabra más fuerte',
	order: 'Orden de autoridad',
	word: {
		law: 'ley',
		'safety-data-sheet': 'HDS',
		'part-limit': 'pieza',
		customer: 'plano',
		'data-sheet': 'hoja',
		shop: 'taller',
		tool: 'herramienta'
	},
	marks: 'Cómo se lee',
	mark: {
		published: 'texto',
		handbook: 'manual',
		paper: 'investigación',
		'common-practice': 'práctica',
		shop: 'taller',
		'data-sheet': 'hoja',
		customer: 'orden',
		arithmetic: 'cuenta',
		example: 'inventado',
		answer: 'ajuste'
	},
	markMeans:
		'Tras una regla: quién lo manda. Barra gruesa: paro de seguridad. Entre corchetes, de dónde sale un número: [hoja] hoja técnica del recubrimiento · [orden] lo anotado · [taller] fijado por este taller · [práctica] práctica común, un valor del taller que su responsable puede cambiar · [texto], [manual], [investigación] publicado · * de memoria, sin cotejar con un texto',
	facts: 'Lo anotado',
	noRecord: 'Una tarjeta no es registro: nada de ella se guarda, y vale solo para este trabajo y este día.',
	signature: 'Ajustó: firma, hora',
	initials: 'Revisó: iniciales',
	demo: 'DEMOSTRACIÓN: taller, personas y hojas técnicas inventados. No es para trabajar.',
	counted: (count: number, name: string) => `${count} × ${name}`
} satisfies typeof en;

/** The bench card: the form for a real job, the card itself, and why there is none. */
export const benchCard = { en, es };

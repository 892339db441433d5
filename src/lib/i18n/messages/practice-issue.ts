const en = {
	intro:
		'A practice drill is a random job ticket. You fill in the set-up sheet station by station, check each station, and see what the rules say. Practice never counts.',
	inHand: 'You have a practice ticket in hand.',
	goOn: 'Go on with it',
	nextTitle: 'The next drill',
	drawnAbout: 'Drawn from everything there is, of another skill than your last one.',
	issueDrawn: 'Issue a drawn ticket',
	chosen: {
		lead: 'Chosen by what you did so far:',
		because: {
			drawn: (skill: string) => `Drawn by lot: ${skill}.`,
			first: (skill: string) => `First three drills of one kind: ${skill}.`,
			need: (skill: string) => `What you have shown least of so far: ${skill}.`,
			retrieval: (skill: string) => `What you practised longest ago, so that it stays: ${skill}.`
		},
		comes: { full: 'nothing filled in', half: 'half of it filled in', worked: 'worked out, to read' },
		expected: (inTen: number) => `About ${inTen} in 10 such drills are expected to come out right.`
	},
	issueChosen: 'Issue the chosen ticket',
	selfTitle: 'Choose yourself',
	supportLegend: 'How much is filled in already?',
	support: {
		full: 'Nothing: all of it is yours',
		half: 'Half of it; you fill in the rest',
		worked: 'All of it, worked out to read'
	},
	issue: 'Issue a ticket',
	breadthLegend: 'How much is on the ticket?',
	breadth: {
		1: 'One thing to notice at most',
		2: 'One or two things to notice',
		3: 'Several things, mixed parts'
	},
	partLegend: 'What do you want to practise?',
	whole: 'The whole job',
	oneStation: (station: string) => `One station: ${station}`,
	short: (title: string, about: string) => `Short drill: ${title} (${about})`
};

const es = {
	intro:
		'Un ejercicio de práctica es una orden de trabajo al azar. Usted llena la hoja de ajuste estación por estación, revisa cada estación y ve qué dicen las reglas. Estos ejercicios nunca cuentan.',
	inHand: 'Tiene una orden de práctica a medias.',
	goOn: 'Seguir con ella',
	nextTitle: 'El siguiente ejercicio',
	drawnAbout: 'Sacado de todo lo que hay, de otra habilidad que la última.',
	issueDrawn: 'Emitir una orden al azar',
	chosen: {
		lead: 'Elegido por lo que ha hecho hasta ahora:',
		because: {
			drawn: (skill: string) => `Sacado al azar: ${skill}.`,
			first: (skill: string) => `Los tres primeros ejercicios son de lo mismo: ${skill}.`,
			need: (skill: string) => `Lo que menos ha mostrado hasta ahora: ${skill}.`,
			retrieval: (skill: string) => `Lo que practicó hace más tiempo, para que no se olvide: ${skill}.`
		},
		comes: { full: 'nada lleno', half: 'la mitad llena', worked: 'resuelto, para leer' },
		expected: (inTen: number) => `Se espera que unos ${inTen} de cada 10 ejercicios así salgan bien.`
	},
	issueChosen: 'Emitir la orden elegida',
	selfTitle: 'Elegir usted',
	supportLegend: '¿Cuánto viene ya lleno?',
	support: {
		full: 'Nada: todo lo llena usted',
		half: 'La mitad; usted llena el resto',
		worked: 'Todo, resuelto para leer'
	},
	issue: 'Emitir una orden',
	breadthLegend: '¿Cuánto trae la orden?',
	breadth: {
		1: 'A lo más una cosa que notar',
		2: 'Una o dos cosas que notar',
		3: 'Varias cosas, piezas mezcladas'
	},
	partLegend: '¿Qué quiere practicar?',
	whole: 'El trabajo completo',
	oneStation: (station: string) => `Una estación: ${station}`,
	short: (title: string, about: string) => `Ejercicio corto: ${title} (${about})`
} satisfies typeof en;

/** Words of issuing a practice drill. */
export const practiceIssue = { en, es };

/** A defective panel with half a record, as it lies on the bench. */
const en = {
	title: 'The panel, and what is written of the job',
	record: 'What can have led to it, and what the record says',
	written: 'Written',
	right: 'Right for this job',
	itsTest: 'Its test ends in',
	says: {
		broken: 'not as the rule says',
		kept: 'as the rule says',
		nothing: 'nothing written'
	},
	testEnds: { reading: 'a number or a written word', eye: 'a look or a question' },
	result: 'One test was done',
	cameOut: {
		broken: (rules: string[]) =>
			rules.length === 1
				? `It says that this rule was broken: ${rules[0]}.`
				: `It says that one of these rules was broken: ${rules.join('; ')}.`,
		kept: (rules: string[]) =>
			rules.length === 1
				? `It says that this rule was kept: ${rules[0]}.`
				: `It says that these rules were kept: ${rules.join('; ')}.`
	},
	toldTitle: (defect: string) => `The case: ${defect}`,
	causes: 'How likely each cause was',
	causesHead: ['Rule that was broken', 'Before the test', 'After it', 'In truth'],
	was: { true: 'broken', false: 'kept' },
	tests: 'How much each test was expected to tell, before any was done',
	testsHead: ['Test of', 'Bits'],
	model: 'What the teaching model takes',
	modelNote:
		'Teaching model: these rates put what is known in an order. They were measured in no shop. A record can be wrong, and so can a test.'
};

const es = {
	title: 'El panel, y lo que se anotó del trabajo',
	record: 'Qué pudo llevar a esto, y qué dice el registro',
	written: 'Anotado',
	right: 'Correcto para este trabajo',
	itsTest: 'Su prueba termina en',
	says: {
		broken: 'no como dice la regla',
		kept: 'como dice la regla',
		nothing: 'nada anotado'
	},
	testEnds: { reading: 'un número o algo escrito', eye: 'una mirada o una pregunta' },
	result: 'Se hizo una prueba',
	cameOut: {
		broken: (rules: string[]) =>
			rules.length === 1
				? `Dice que esta regla se rompió: ${rules[0]}.`
				: `Dice que una de estas reglas se rompió: ${rules.join('; ')}.`,
		kept: (rules: string[]) =>
			rules.length === 1
				? `Dice que esta regla se cumplió: ${rules[0]}.`
				: `Dice que estas reglas se cumplieron: ${rules.join('; ')}.`
	},
	toldTitle: (defect: string) => `El caso: ${defect}`,
	causes: 'Qué tan probable era cada causa',
	causesHead: ['Regla que se rompió', 'Antes de la prueba', 'Después', 'En verdad'],
	was: { true: 'se rompió', false: 'se cumplió' },
	tests: 'Cuánto se esperaba que dijera cada prueba, antes de hacer ninguna',
	testsHead: ['Prueba de', 'Bits'],
	model: 'De qué parte el modelo didáctico',
	modelNote:
		'Modelo didáctico: estas frecuencias ponen en orden lo que se sabe. No se midieron en ningún taller. Un registro puede estar mal, y una prueba también.'
} satisfies typeof en;

export const caseFile = { en, es };

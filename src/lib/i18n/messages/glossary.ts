const en = {
	title: 'Glossary',
	intro:
		'Words of the trade as the lessons use them, said in our own words. No standard is quoted here; where a data sheet or a standard defines a word, that is what counts.',
	letters: 'Letters',
	link: 'Glossary: words of the trade in both languages',
	lesson: (title: string) => `Lesson: ${title}`
};

const es = {
	title: 'Glosario',
	intro:
		'Palabras del oficio tal como las usan las lecciones, dichas con nuestras palabras. Aquí no se cita ninguna norma; si una hoja técnica o una norma define una palabra, vale lo que dice ella.',
	letters: 'Letras',
	link: 'Glosario: palabras del oficio en los dos idiomas',
	lesson: (title: string) => `Lección: ${title}`
} satisfies typeof en;

export const glossary = { en, es };

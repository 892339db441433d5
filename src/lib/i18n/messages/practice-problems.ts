const en = {
	noSheets: 'No data sheet of this shop gets that far. The lead adds data sheets under Shop.',
	wrongChoice: 'Choose from the list.',
	tampered: 'That form did not come from this page. Nothing was changed.',
	unreadable: 'Some entries cannot be read. Correct them first.'
};

const es = {
	noSheets: 'Ninguna hoja técnica de este taller llega hasta ahí. El responsable las agrega en Taller.',
	wrongChoice: 'Elija de la lista.',
	tampered: 'Ese formulario no salió de esta página. No se cambió nada.',
	unreadable: 'Hay datos que no se pueden leer. Corríjalos primero.'
} satisfies typeof en;

/** What is wrong with a form of practice. */
export const practiceProblems = { en, es };

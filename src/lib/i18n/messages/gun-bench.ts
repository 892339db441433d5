const en = {
	title: 'At the gun bench',
	model:
		'Teaching model: an even arm, the gun square to the panel, a fan that is heaviest in its middle, every coat on the strokes of the one before. It does not predict a real panel. A sprayed one does.',
	draw: 'Draw the film',
	notDrawn: 'The film could not be drawn. Move a control again, or load the page again.',
	take: 'Take these settings over into the sheet',
	taken: 'Written into the sheet. Nothing is checked yet.',
	classes: 'How much of the panel is how thick',
	film: 'Film',
	edge: 'From the edge',
	stands: 'How it stands',
	readings: 'Readings across the panel',
	wantedBand: 'wanted',
	derivation: 'How these numbers came about'
};

const es = {
	title: 'En el banco de la pistola',
	model:
		'Modelo didáctico: brazo parejo, pistola en escuadra con el panel, abanico más cargado en el centro y cada mano sobre las pasadas de la anterior. No predice un panel real. Eso lo dice uno aplicado.',
	draw: 'Dibujar la película',
	notDrawn: 'No se pudo dibujar la película. Mueva otra vez un control o vuelva a cargar la página.',
	take: 'Pasar estos ajustes a la hoja',
	taken: 'Quedó escrito en la hoja. Todavía no se revisa nada.',
	classes: 'Qué parte del panel queda de qué grueso',
	film: 'Película',
	edge: 'Desde el borde',
	stands: 'Cómo queda',
	readings: 'Lecturas a lo ancho del panel',
	wantedBand: 'se pide',
	derivation: 'De dónde salen estos números'
} satisfies typeof en;

/** Words of the gun bench and of the film drawn beside it. */
export const gunBench = { en, es };

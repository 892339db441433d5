const en = {
	panel: (across: string, along: string) =>
		`What these settings lay on a witness panel of ${along} by ${across}`,
	control: {
		'gun-distance': 'Gun to panel',
		'fan-width': 'Fan width',
		overlap: 'Overlap',
		'gun-speed': 'Gun speed',
		coats: 'Coats',
		flow: 'Fluid flow'
	},
	flowHint:
		'The sheet does not ask for it. In the shop you weigh what the gun gives in a minute; here you find the flow that suits the rest.',
	fill: 'Fill in the numbers and press “Draw the film”.',
	cannotRead: (control: string, problem: string) => `${control}: ${problem}`,
	beyond: (control: string, reach: string) => `${control}: this bench goes ${reach}.`,
	noFilm: 'No film is wanted on this job that the bench could draw.',
	found: {
		mean: 'On average',
		lowest: 'Lowest',
		highest: 'Highest',
		unevenness: 'Highest less lowest, part of the average',
		wet: 'Wet film of one coat, on average',
		strokes: 'Strokes of one coat',
		index: 'From stroke to stroke',
		wanted: 'Wanted on average',
		spot: 'A single spot may show'
	},
	verdict: {
		accepted:
			'Film accepted: the average is inside, and no place is outside what a spot may show. Whether each setting is right, the check of the sheet says.',
		thin: 'Film not accepted: too thin on average.',
		thick: 'Film not accepted: too thick on average.',
		uneven: 'Film not accepted: right on average, but uneven. There are places that no spot may show.'
	},
	landing: (stands: string) => `How the drops land, by distance and speed: ${stands}.`,
	class: {
		'too-thin': 'too thin for a spot',
		thin: 'thin, a spot may be',
		inside: 'as wanted',
		thick: 'thick, a spot may be',
		'too-thick': 'too thick for a spot'
	},
	share: 'Part of the panel',
	picture: (strokes: string) =>
		`Left, the panel: bands of film, arrows for the ${strokes} strokes of a coat. Right, the film at each height of the panel beside the wanted film. The same is in the lists below.`
};

const es = {
	panel: (across: string, along: string) =>
		`Lo que dejan estos ajustes en un panel testigo de ${along} por ${across}`,
	control: {
		'gun-distance': 'De la pistola al panel',
		'fan-width': 'Ancho del abanico',
		overlap: 'Traslape',
		'gun-speed': 'Velocidad de la pistola',
		coats: 'Manos',
		flow: 'Caudal de pintura'
	},
	flowHint:
		'La hoja no lo pide. En el taller se pesa lo que da la pistola en un minuto; aquí usted busca el caudal que va con lo demás.',
	fill: 'Llene los números y oprima «Dibujar la película».',
	cannotRead: (control: string, problem: string) => `${control}: ${problem}`,
	beyond: (control: string, reach: string) => `${control}: este banco abarca ${reach}.`,
	noFilm: 'En este trabajo no se pide ninguna película que el banco pueda dibujar.',
	found: {
		mean: 'En promedio',
		lowest: 'Lo más delgado',
		highest: 'Lo más grueso',
		unevenness: 'Diferencia entre lo más grueso y lo más delgado, parte del promedio',
		wet: 'Película húmeda de una mano, en promedio',
		strokes: 'Pasadas de una mano',
		index: 'De una pasada a la siguiente',
		wanted: 'Se pide en promedio',
		spot: 'Un solo lugar puede dar'
	},
	verdict: {
		accepted:
			'La película se acepta: el promedio queda dentro y ningún lugar se sale de lo que puede dar uno solo. Si cada ajuste es correcto, lo dice la revisión de la hoja.',
		thin: 'La película no se acepta: en promedio queda delgada.',
		thick: 'La película no se acepta: en promedio queda gruesa.',
		uneven:
			'La película no se acepta: el promedio está bien, pero queda dispareja. Hay lugares que se salen de lo permitido.'
	},
	landing: (stands: string) => `Cómo llegan las gotas, por distancia y velocidad: ${stands}.`,
	class: {
		'too-thin': 'demasiado delgada para un lugar',
		thin: 'delgada, se permite en un lugar',
		inside: 'como se pide',
		thick: 'gruesa, se permite en un lugar',
		'too-thick': 'demasiado gruesa para un lugar'
	},
	share: 'Parte del panel',
	picture: (strokes: string) =>
		`A la izquierda, el panel: bandas de película y flechas para las ${strokes} pasadas de una mano. A la derecha, la película a cada altura del panel junto a la que se pide. Lo mismo está en las listas de abajo.`
} satisfies typeof en;

/** What a film map says: numbers and verdicts in words. */
export const filmMap = { en, es };

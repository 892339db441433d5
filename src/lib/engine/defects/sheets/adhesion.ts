import type { DefectSheet } from '../sheet';

/** Films that do not hold, and rust that lifts them. */
export const adhesionDefects = {
	flaking: {
		look: {
			en: 'The film chips off in flakes or sheets and leaves clean metal or plastic.',
			es: 'La película salta en escamas o láminas y deja metal o plástico limpio.'
		},
		lookAlike: {
			en: 'Look at the back of a flake and the place it left: bare on both says the surface, coating on both says a film that split because it did not cure.',
			es: 'Mire el reverso de la escama y el lugar que dejó: desnudo en ambos culpa a la superficie; recubrimiento en ambos, a una película que se partió por falta de curado.'
		},
		now: {
			en: 'Hold the whole lot. Do not coat over it: strip fully once the cause is known.',
			es: 'Retenga todo el lote. No recubra encima: decape por completo cuando se conozca la causa.'
		}
	},
	'intercoat-peel': {
		look: {
			en: 'The top coat peels away and the coat under it stays, whole and shiny.',
			es: 'La mano superior se pela y la de abajo queda entera y brillante.'
		},
		lookAlike: {
			en: 'The tape of a cross-cut shows one coat’s colour only; with flaking from the part it shows all of them.',
			es: 'La cinta del corte cruzado muestra el color de una sola mano; si se desprende de la pieza, los muestra todos.'
		},
		now: {
			en: 'Hold. Take the top coat off, scuff what stays, recoat inside the window.',
			es: 'Retenga. Quite la mano superior, lije lo que queda y recubra dentro de la ventana.'
		}
	},
	'flash-rust': {
		look: {
			en: 'Orange freckles, 0.1 to 2 mm, or a veil on bare steel, or the same seen through the film.',
			es: 'Pecas naranjas, de 0.1 a 2 mm, o un velo sobre acero desnudo, o lo mismo visto a través de la película.'
		},
		lookAlike: {
			en: 'A stain from water wipes off clean; rust leaves orange on a wet white cloth.',
			es: 'Una mancha de agua se limpia; el óxido deja naranja en un trapo blanco húmedo.'
		},
		now: {
			en: 'Blast again; a wipe leaves it in the valleys. If it is under the film, strip.',
			es: 'Granalle de nuevo; un trapo lo deja en los valles. Si está bajo la película, decape.'
		}
	},
	'pinpoint-rust': {
		look: {
			en: 'Regular tiny rust dots that appear after damp, on a film that looks closed.',
			es: 'Puntitos regulares de óxido que salen con la humedad en una película que parece cerrada.'
		},
		lookAlike: {
			en: 'Flash rust was there before coating and lies in patches; these dots are as regular as the blast.',
			es: 'La oxidación instantánea estaba antes de recubrir y va en manchas; estas pecas son tan regulares como el granallado.'
		},
		now: {
			en: 'Hold. Compare profile and film on the witness, then strip and coat with a finer profile or more film.',
			es: 'Retenga. Compare perfil y película en el testigo; luego decape y recubra con perfil más fino o más película.'
		}
	}
} satisfies Record<string, DefectSheet>;

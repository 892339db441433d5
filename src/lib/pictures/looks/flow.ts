import type { Look } from './look';
import { NOTHING_SEEN } from './nothing-seen';

/** Films that lay down unevenly. */
export const flowLooks = {
	'orange-peel': {
		grows: 'strength',
		plain: {
			en: 'A bumpy skin of soft round hills; the mirrored lamp breaks up into ripples, and the film is as shiny as elsewhere.',
			es: 'Una superficie abollada de lomas suaves y redondas; el reflejo de la lámpara se rompe en ondas y la película brilla igual que en el resto.'
		},
		raking: {
			en: 'Round hills and hollows, evenly spread, light on one side and dark on the other.',
			es: 'Lomas y hoyos redondos, repartidos por igual, claros de un lado y oscuros del otro.'
		},
		loupe: {
			en: 'Wide, smooth slopes without grain; the film is closed.',
			es: 'Pendientes anchas y lisas, sin grano; la película está cerrada.'
		},
		section: {
			en: 'The top of the film rolls in long waves; the layer is whole throughout.',
			es: 'La superficie sube y baja en ondas largas; la capa está completa en todo el corte.'
		}
	},
	runs: {
		grows: 'count',
		plain: {
			en: 'Tongues of film reaching downwards, each ending in a rounded lip that catches the lamp.',
			es: 'Lenguas de película hacia abajo; cada una termina en un labio redondo que refleja la lámpara.'
		},
		raking: {
			en: 'Each tongue stands up: a bright side, a dark side and a deep shadow behind its lip.',
			es: 'Cada lengua sobresale: un lado claro, otro oscuro y una sombra honda tras el labio.'
		},
		loupe: {
			en: 'The lip is full and smooth, as glossy as the film around it.',
			es: 'El labio es lleno y liso, tan brillante como la película de alrededor.'
		},
		section: {
			en: 'A single layer swells to a multiple of its thickness, hard all the way through.',
			es: 'Una sola capa se engrosa a varias veces su espesor, dura de arriba abajo.'
		}
	},
	'cold-run': {
		grows: 'count',
		plain: {
			en: 'Tongues of film reaching downwards with slack, rounded lips.',
			es: 'Lenguas de película hacia abajo con labios redondos y flojos.'
		},
		raking: {
			en: 'Each tongue stands up, with fine creases across it under the low light.',
			es: 'Cada lengua sobresale, con arrugas finas que la cruzan bajo la luz rasante.'
		},
		loupe: {
			en: 'Fine creases cross the swelling, as on a skin that was pushed while setting.',
			es: 'Arrugas finas cruzan el bulto, como en una nata empujada mientras se endurecía.'
		},
		section: {
			en: 'A skin lies over a pocket that stayed soft while the film thickened.',
			es: 'Una capa endurecida cubre una bolsa que siguió blanda mientras la película engrosaba.'
		}
	},
	'dry-spray': {
		grows: 'area',
		plain: {
			en: 'A dull belt with a sandy look, its borders drifting.',
			es: 'Una franja opaca de aspecto arenoso, de bordes imprecisos.'
		},
		raking: {
			en: 'The belt sparkles with dense, even grain; outside it the film is calm.',
			es: 'La franja se llena de grano denso y parejo; fuera de ella la película está tranquila.'
		},
		loupe: {
			en: 'Grain lies on grain, without a closed surface and without gloss.',
			es: 'Grano sobre grano, sin superficie cerrada y sin brillo.'
		},
		section: {
			en: 'The top of the film is a row of small peaks; below it the layer is whole.',
			es: 'La superficie es una fila de picos pequeños; debajo la capa está completa.'
		}
	},
	'fat-edges': {
		grows: 'strength',
		plain: {
			en: 'A darker, rounded bead follows the outline of the part, along the bottom and up the side alike.',
			es: 'Un cordón más oscuro y redondeado sigue el contorno de la pieza, igual abajo que al costado.'
		},
		raking: {
			en: 'The outline stands up as a rounded wall; the face within is flat.',
			es: 'El contorno sobresale como un muro redondeado; la cara interior es plana.'
		},
		loupe: {
			en: 'The film swells smoothly towards the border and drops off there.',
			es: 'La película se engrosa suavemente hacia el borde y ahí termina.'
		},
		section: {
			en: 'Next to the border the layer is a multiple of its thickness on the face.',
			es: 'Junto al borde la capa tiene varias veces el espesor de la cara.'
		}
	},
	'thin-edges': {
		grows: 'strength',
		plain: {
			en: 'A pale line of metal follows the sharp ridge of the part.',
			es: 'Una línea clara de metal sigue la arista viva de la pieza.'
		},
		raking: {
			en: 'The ridge itself stands up; its crown glitters like bare metal.',
			es: 'La arista sobresale y su cresta destella como metal desnudo.'
		},
		loupe: {
			en: 'The film fades out towards the crown of the ridge on both sides alike.',
			es: 'La película se desvanece hacia la cresta por ambos lados por igual.'
		},
		section: {
			en: 'Over the crown the layer is a fraction of what it is on the slopes.',
			es: 'Sobre la cresta la capa es una fracción de lo que mide en las laderas.'
		}
	},
	holiday: {
		grows: 'area',
		plain: {
			en: 'A straight pale strip where substrate is seen, between two bands of full film.',
			es: 'Una tira recta y clara donde se ve el sustrato, entre dos bandas de película completa.'
		},
		raking: {
			en: 'The strip lies low and glitters; its borders run straight.',
			es: 'La tira está hundida y destella; sus bordes corren rectos.'
		},
		loupe: {
			en: 'At the rim the film thins out into scattered drops; nothing was torn.',
			es: 'En el borde la película se adelgaza en gotas sueltas; nada se arrancó.'
		},
		section: {
			en: 'The layer runs out to nothing without a step, and the substrate lies open.',
			es: 'La capa se adelgaza hasta nada sin escalón y el sustrato queda abierto.'
		}
	},
	mottling: {
		grows: 'strength',
		plain: {
			en: 'Clouds of darker and lighter tone, dull here and shiny there, without direction.',
			es: 'Nubes más oscuras y más claras, opacas aquí y brillantes allá, sin dirección.'
		},
		raking: NOTHING_SEEN.raking,
		loupe: NOTHING_SEEN.loupe,
		section: NOTHING_SEEN.section
	},
	banding: {
		grows: 'strength',
		plain: {
			en: 'Parallel stripes across the face, shiny and dull by turns, evenly apart.',
			es: 'Franjas paralelas a lo ancho de la cara, brillantes y opacas por turnos, a distancia pareja.'
		},
		raking: {
			en: 'Low ridges run side by side; the valleys between them are grainy.',
			es: 'Lomos bajos corren lado a lado; los valles entre ellos son granulosos.'
		},
		loupe: {
			en: 'Smooth film passes over into fine grain.',
			es: 'La película lisa pasa poco a poco a grano fino.'
		},
		section: {
			en: 'The layer is thicker here than a sound one; further along it is thinner.',
			es: 'La capa es aquí más gruesa que una sana; más allá es más delgada.'
		}
	},
	wrinkling: {
		grows: 'area',
		plain: {
			en: 'A puckered skin of fine folds that dulls the mirrored lamp.',
			es: 'Una superficie fruncida de pliegues finos que opaca el reflejo de la lámpara.'
		},
		raking: {
			en: 'Crooked folds stand close together, every one with its shadow.',
			es: 'Pliegues torcidos muy juntos, cada uno con su sombra.'
		},
		loupe: {
			en: 'Round folds meet in sharp, winding valleys.',
			es: 'Pliegues redondos que se juntan en valles agudos y sinuosos.'
		},
		section: {
			en: 'The top of the film rises and falls steeply in narrow folds.',
			es: 'La superficie sube y baja bruscamente en pliegues estrechos.'
		}
	}
} satisfies Record<string, Look>;

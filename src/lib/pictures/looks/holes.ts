import type { Look } from './look';

/** Films with holes and pits. */
export const holeLooks = {
	fisheyes: {
		grows: 'count',
		plain: {
			en: 'Round dark spots, each with a bright ring.',
			es: 'Manchas redondas y oscuras, cada una con un anillo claro.'
		},
		raking: {
			en: 'Round pits with a raised rim: a bright crescent on one side, shadow on the other.',
			es: 'Hoyos redondos de borde alzado: media luna clara de un lado, sombra del otro.'
		},
		loupe: {
			en: 'A flat pit wider than deep, with a smooth raised rim; substrate shows in the middle.',
			es: 'Un hoyo plano, más ancho que hondo, de borde liso y alzado; en el centro se ve el sustrato.'
		},
		section: {
			en: 'The film has drawn back into a rim on both sides and left the substrate open between.',
			es: 'La película se retiró hacia un borde a ambos lados y dejó el sustrato abierto en medio.'
		}
	},
	pinholes: {
		grows: 'count',
		plain: {
			en: 'Fine dark dots, as if pricked.',
			es: 'Motas oscuras y finas, como picadas.'
		},
		raking: {
			en: 'Tiny dark dots; nothing stands up around them.',
			es: 'Motas oscuras diminutas; nada sobresale a su alrededor.'
		},
		loupe: {
			en: 'Narrow round holes with a clean border and no rim.',
			es: 'Orificios redondos y angostos, de orilla limpia y sin reborde.'
		},
		section: {
			en: 'A narrow shaft leads straight down through the film; its shoulders are level.',
			es: 'Un canal angosto baja recto por la película; sus hombros están a nivel.'
		}
	},
	'solvent-pop': {
		grows: 'count',
		plain: {
			en: 'Fine dark dots gathered where the film is full.',
			es: 'Motas oscuras y finas, reunidas donde la película es gruesa.'
		},
		raking: {
			en: 'Tiny bumps with a dark middle, on gently swollen film.',
			es: 'Bultos diminutos de centro oscuro, sobre una película algo abultada.'
		},
		loupe: {
			en: 'Small domes, most of them burst open at the top, a few still closed.',
			es: 'Cúpulas pequeñas, la mayoría abiertas por arriba, algunas aún cerradas.'
		},
		section: {
			en: 'A dome torn open on top; closed bubbles wait within the film beside it.',
			es: 'Una cúpula rota por arriba; al lado, burbujas cerradas dentro de la película.'
		}
	},
	'outgassing-blisters': {
		grows: 'count',
		plain: {
			en: 'Rounded bumps, some with a dark mouth, in places that repeat from part to part.',
			es: 'Bultos redondeados, algunos con una boca oscura, en lugares que se repiten de pieza a pieza.'
		},
		raking: {
			en: 'Each bump throws a long shadow; the open ones look like little volcanoes.',
			es: 'Cada bulto da una sombra larga; los abiertos parecen volcanes pequeños.'
		},
		loupe: {
			en: 'A broad cone with a narrow mouth leading down to the part.',
			es: 'Un cono ancho con una boca estrecha que baja hasta la pieza.'
		},
		section: {
			en: 'A channel runs from a pore of the part up through the film and out at the top.',
			es: 'Un canal va desde un poro de la pieza, por la película, hasta la superficie.'
		}
	},
	'air-line-spits': {
		grows: 'count',
		plain: {
			en: 'Single large drops in one row, each wetter than the film and ringed.',
			es: 'Gotas grandes y aisladas en una sola fila, más mojadas que la película y con anillo.'
		},
		raking: {
			en: 'Shallow bowls in a row, each inside a raised ring.',
			es: 'Cuencos poco hondos en fila, cada uno dentro de un anillo alzado.'
		},
		loupe: {
			en: 'A smooth bowl with a thrown-up rim and a faint second ring outside it.',
			es: 'Un cuenco liso de borde levantado y un segundo anillo tenue por fuera.'
		},
		section: {
			en: 'The film is pushed down in the middle and heaped up around it.',
			es: 'La película está hundida al centro y amontonada alrededor.'
		}
	}
} satisfies Record<string, Look>;

import type { Look } from './look';

/** Lines, marks and builds where part and film meet something else. */
export const maskingLooks = {
	'mask-bleed': {
		grows: 'strength',
		plain: {
			en: 'Where film ends and bare metal begins, feathers of colour creep out over the metal.',
			es: 'Donde termina la película y empieza el metal, plumas de color avanzan sobre el metal.'
		},
		raking: {
			en: 'The feathers are thin; the step of the full film lies behind them.',
			es: 'Las plumas son delgadas; el escalón de la película completa queda detrás.'
		},
		loupe: {
			en: 'Fingers of thin film reach past the straight line.',
			es: 'Dedos de película delgada pasan de la línea recta.'
		},
		section: {
			en: 'A thin tongue of film reaches past the step of the full layer.',
			es: 'Una lengua delgada de película pasa del escalón de la capa completa.'
		}
	},
	'mask-ridge': {
		grows: 'strength',
		plain: {
			en: 'Where film ends and bare metal begins, the line is raised and ragged like a saw.',
			es: 'Donde termina la película y empieza el metal, la línea está alzada y dentada como sierra.'
		},
		raking: {
			en: 'The line stands up as a wall and throws a toothed shadow.',
			es: 'La línea se alza como un muro y da una sombra dentada.'
		},
		loupe: {
			en: 'Torn teeth of thick film along the line.',
			es: 'Dientes rotos de película gruesa a lo largo de la línea.'
		},
		section: {
			en: 'At its end the film stands up as a narrow wall.',
			es: 'En su final la película se alza como un muro angosto.'
		}
	},
	'over-thick': {
		grows: 'strength',
		plain: {
			en: 'The rim of the bore is rounded and the bore narrower; film lies dark around it and in the corner.',
			es: 'El borde del agujero está redondeado y el agujero es más angosto; hay película oscura alrededor y en la esquina.'
		},
		raking: {
			en: 'A soft wall rings the bore.',
			es: 'Un muro suave rodea el agujero.'
		},
		loupe: {
			en: 'The film rolls over the rim into the bore without a break.',
			es: 'La película pasa sobre el borde hacia el agujero sin romperse.'
		},
		section: {
			en: 'The layer is a multiple of the usual thickness and reaches into the bore.',
			es: 'La capa tiene varias veces el espesor usual y entra en el agujero.'
		}
	},
	'rack-mark': {
		grows: 'strength',
		plain: {
			en: 'One bare round spot, and a thin bent shadow leading away from it.',
			es: 'Un solo sitio redondo y desnudo, y una sombra delgada y doblada que sale de él.'
		},
		raking: {
			en: 'A round hollow with a raised lip.',
			es: 'Un hueco redondo de labio alzado.'
		},
		loupe: {
			en: 'Bare rough metal inside a smooth lip of film.',
			es: 'Metal rugoso y desnudo dentro de un labio liso de película.'
		},
		section: {
			en: 'The film stops at a lip on both sides; between them the substrate lies open.',
			es: 'La película se detiene en un labio a ambos lados; en medio queda el sustrato.'
		}
	},
	'print-through': {
		grows: 'strength',
		plain: {
			en: 'A regular pattern of lines lies in the mirrored lamp.',
			es: 'Un patrón regular de líneas aparece en el reflejo de la lámpara.'
		},
		raking: {
			en: 'Straight lines or a cloth pattern stand out in light and shadow.',
			es: 'Líneas rectas o un dibujo de tela resaltan en luz y sombra.'
		},
		loupe: {
			en: 'Smooth rises and dips in regular order; the film is closed over them.',
			es: 'Altos y bajos lisos en orden regular; la película los cubre cerrada.'
		},
		section: {
			en: 'The substrate has the pattern; the film follows it and is whole.',
			es: 'El patrón está en el sustrato; la película lo sigue y está completa.'
		}
	}
} satisfies Record<string, Look>;

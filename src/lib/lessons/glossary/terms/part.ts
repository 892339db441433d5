import type { Term } from '../term';

export const partTerms = [
	{
		id: 'substrate',
		term: { en: 'substrate', es: 'sustrato' },
		meaning: {
			en: 'What the coating lies on: the metal, plastic or laminate of the part.',
			es: 'Aquello sobre lo que queda el recubrimiento: el metal, plástico o laminado de la pieza.'
		},
		lesson: 'materials'
	},
	{
		id: 'heat-limit',
		term: { en: 'heat limit', es: 'límite de calor' },
		meaning: {
			en: 'The hottest a part may get before it softens, warps or loses strength.',
			es: 'Lo más caliente que puede estar una pieza antes de ablandarse, torcerse o perder resistencia.'
		},
		lesson: 'heat-limits'
	},
	{
		id: 'temper',
		term: { en: 'temper', es: 'revenido' },
		meaning: {
			en: 'The heating that gave a hardened part its strength. A hotter oven takes that strength away again.',
			es: 'El calentamiento que le dio su resistencia a una pieza templada. Un horno más caliente se la quita.'
		},
		lesson: 'heat-limits'
	},
	{
		id: 'casting',
		term: { en: 'casting', es: 'fundición' },
		meaning: {
			en: 'A part poured as liquid metal into a mould. Its pores can hold oil and gas.',
			es: 'Pieza vaciada como metal líquido en un molde. Sus poros pueden guardar aceite y gas.'
		},
		lesson: 'bake-out'
	},
	{
		id: 'anodising',
		term: { en: 'anodising', es: 'anodizado' },
		meaning: {
			en: 'A hard oxide layer grown on aluminium. It is part of the surface and must not be blasted away.',
			es: 'Capa dura de óxido que se hace crecer sobre aluminio. Es parte de la superficie y no se debe granallar.'
		},
		lesson: 'materials'
	},
	{
		id: 'plating',
		term: { en: 'plating', es: 'baño metálico' },
		meaning: {
			en: 'A thin layer of another metal on the part. Some kinds make toxic dust.',
			es: 'Capa delgada de otro metal sobre la pieza. Algunas sueltan polvo tóxico.'
		},
		lesson: 'materials'
	},
	{
		id: 'laminate',
		term: { en: 'laminate', es: 'laminado' },
		meaning: {
			en: 'Layers of fibre cloth held together by resin. Cut fibres do not grow back.',
			es: 'Capas de tela de fibra unidas con resina. Una fibra cortada ya no se repone.'
		},
		lesson: 'blast-settings'
	},
	{
		id: 'fit-face',
		term: { en: 'fit face', es: 'cara de ajuste' },
		meaning: {
			en: 'A face, bore or thread that has to fit another part. Film on it takes up the room.',
			es: 'Cara, barreno o rosca que debe encajar con otra pieza. La película le quita lugar.'
		},
		lesson: 'masking'
	},
	{
		id: 'clearance',
		term: { en: 'clearance', es: 'holgura' },
		meaning: {
			en: 'The room left between two parts that fit into one another.',
			es: 'El espacio que queda entre dos piezas que encajan.'
		},
		lesson: 'taking-apart'
	},
	{
		id: 'blind-hole',
		term: { en: 'blind hole', es: 'agujero ciego' },
		meaning: {
			en: 'A hole with one opening only. What runs in cannot run through.',
			es: 'Agujero con una sola abertura. Lo que entra no puede salir por el otro lado.'
		},
		lesson: 'racking'
	},
	{
		id: 'sealed-cavity',
		term: { en: 'sealed cavity', es: 'cavidad cerrada' },
		meaning: {
			en: 'A hollow with no opening. In the oven what is inside builds up pressure.',
			es: 'Un hueco sin abertura. En el horno, lo que hay adentro levanta presión.'
		},
		lesson: 'taking-apart'
	},
	{
		id: 'burr',
		term: { en: 'burr', es: 'rebaba' },
		meaning: {
			en: 'A sharp lip of metal left by cutting or drilling. Film draws back from it.',
			es: 'Labio filoso de metal que deja un corte o un taladro. La película se retira de él.'
		}
	}
] as const satisfies readonly Term[];

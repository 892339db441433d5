import type { Look } from './look';

/** Films that let go, and rust below them. */
export const adhesionLooks = {
	flaking: {
		grows: 'area',
		plain: {
			en: 'Torn patches of pale grey, with film standing up along their rims.',
			es: 'Parches rotos de gris claro, con la película levantada en sus orillas.'
		},
		raking: {
			en: 'The patches lie deep behind a sharp, shadowed rim, and glitter.',
			es: 'Los parches están hundidos tras una orilla aguda con sombra, y destellan.'
		},
		loupe: {
			en: 'The floor of the patch is rough, bare and grainy; the break is sharp.',
			es: 'El fondo del parche es rugoso, desnudo y granuloso; la rotura es aguda.'
		},
		section: {
			en: 'The whole layer is gone down to the substrate; beside it a gap opens underneath.',
			es: 'Falta la capa entera hasta el sustrato; al lado se abre un hueco por debajo.'
		}
	},
	'intercoat-peel': {
		grows: 'area',
		plain: {
			en: 'Torn patches of pale grey, with film standing up along their rims.',
			es: 'Parches rotos de gris claro, con la película levantada en sus orillas.'
		},
		raking: {
			en: 'The patches lie behind a low, shadowed rim; their floor is smooth.',
			es: 'Los parches están tras una orilla baja con sombra; su fondo es liso.'
		},
		loupe: {
			en: 'The floor of the patch is a whole, smooth and shiny film.',
			es: 'El fondo del parche es una película completa, lisa y brillante.'
		},
		section: {
			en: 'The upper of two layers is missing; the lower one is whole and as thick as ever.',
			es: 'Falta la capa superior de dos; la inferior está completa y con todo su espesor.'
		}
	},
	'flash-rust': {
		grows: 'area',
		plain: {
			en: 'Orange freckles of many sizes, gathered in clouds.',
			es: 'Pecas naranjas de muchos tamaños, reunidas en nubes.'
		},
		raking: {
			en: 'The clouds are seen by their colour only; the face is flat.',
			es: 'Las nubes se ven solo por su color; la cara es plana.'
		},
		loupe: {
			en: 'Soft orange freckles, large and small, below a whole and even film.',
			es: 'Pecas naranjas y difusas, grandes y chicas, bajo una película completa y pareja.'
		},
		section: {
			en: 'Brown lenses lie between substrate and film; the film over them is whole.',
			es: 'Lentes marrones entre sustrato y película; la película encima está completa.'
		}
	},
	'pinpoint-rust': {
		grows: 'count',
		plain: {
			en: 'Small brown-orange dots of one size, regularly spread.',
			es: 'Motas pequeñas color naranja y marrón, de un solo tamaño y repartidas con regularidad.'
		},
		raking: {
			en: 'Every dot stands up a little.',
			es: 'Cada mota sobresale un poco.'
		},
		loupe: {
			en: 'Round brown dots, all alike, each on a small rise.',
			es: 'Motas redondas y marrones, todas iguales, cada una sobre un pequeño alto.'
		},
		section: {
			en: 'The roughness of the substrate reaches through the film and is brown at its tips.',
			es: 'La rugosidad del sustrato atraviesa la película y es marrón en sus cimas.'
		}
	}
} satisfies Record<string, Look>;

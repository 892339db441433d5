import type { Look } from './look';

/** Parts that suffered under a sound film. */
export const partLooks = {
	'distorted-part': {
		grows: 'strength',
		plain: {
			en: 'The mirrored lamp bends: broad waves, and one sunken spot.',
			es: 'El reflejo de la lámpara se dobla: ondas anchas y un sitio hundido.'
		},
		raking: {
			en: 'Broad slopes of light and shade; one round hollow.',
			es: 'Pendientes anchas de luz y sombra; un hueco redondo.'
		},
		loupe: {
			en: 'The film is smooth and closed, on a slope.',
			es: 'La película es lisa y cerrada, sobre una pendiente.'
		},
		section: {
			en: 'Substrate and film bend together; the layer keeps its thickness.',
			es: 'Sustrato y película se curvan juntos; la capa conserva su espesor.'
		}
	},
	'solvent-crazing': {
		grows: 'count',
		plain: {
			en: 'Silvery hairlines spread out from one place.',
			es: 'Líneas plateadas finas como cabellos salen de un mismo lugar.'
		},
		raking: {
			en: 'The lines are seen by their shine; nothing stands up.',
			es: 'Las líneas se ven por su destello; nada sobresale.'
		},
		loupe: {
			en: 'Straight silvery lines below a film that is whole.',
			es: 'Líneas rectas y plateadas bajo una película completa.'
		},
		section: {
			en: 'Cracks run down into the substrate; the film above is whole.',
			es: 'Las grietas bajan por el sustrato; la película encima está completa.'
		}
	},
	'anodise-crazing': {
		grows: 'count',
		plain: {
			en: 'Pale fine lines that join into a closed net.',
			es: 'Líneas finas y claras que se unen en una red cerrada.'
		},
		raking: {
			en: 'The net is seen by its colour; it hardly has depth.',
			es: 'La red se ve por su color; apenas tiene hondura.'
		},
		loupe: {
			en: 'The lines meet in knots and close into meshes, below a whole film.',
			es: 'Las líneas se juntan en nudos y cierran mallas, bajo una película completa.'
		},
		section: {
			en: 'A pale layer on the metal is cracked across; the film on top is whole.',
			es: 'Una capa clara sobre el metal está agrietada; la película encima está completa.'
		}
	}
} satisfies Record<string, Look>;

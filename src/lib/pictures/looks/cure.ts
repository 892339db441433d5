import type { Look } from './look';
import { NOTHING_SEEN } from './nothing-seen';

/** Films the climate or the oven changed. */
export const cureLooks = {
	blushing: {
		grows: 'area',
		plain: {
			en: 'Milky clouds that dull the film.',
			es: 'Nubes lechosas que opacan la película.'
		},
		raking: {
			en: 'Pale clouds; under the low lamp the face stays flat.',
			es: 'Nubes claras; bajo la lámpara rasante la cara sigue plana.'
		},
		loupe: {
			en: 'A whitish haze within a smooth, closed film.',
			es: 'Una bruma blanquecina dentro de una película lisa y cerrada.'
		},
		section: {
			en: 'Tiny pale drops hang within the upper part of the film.',
			es: 'Gotitas claras suspendidas en la parte alta de la película.'
		}
	},
	'amine-bloom': {
		grows: 'area',
		plain: {
			en: 'Pale, slightly yellow clouds that dull the film.',
			es: 'Nubes claras, algo amarillas, que opacan la película.'
		},
		raking: {
			en: 'Pale clouds with a fine beaded texture.',
			es: 'Nubes claras con una textura fina de perlas.'
		},
		loupe: {
			en: 'A film of tiny beads lies on the surface.',
			es: 'Sobre la superficie hay una capa de perlas diminutas.'
		},
		section: {
			en: 'A thin greasy layer lies on top; the film below is whole.',
			es: 'Una capa grasosa y delgada queda encima; la película de abajo está completa.'
		}
	},
	'gloss-off': {
		grows: 'strength',
		plain: {
			en: 'Smooth and of one colour, but the mirrored lamp is sharper, or weaker, than on the master.',
			es: 'Lisa y de un solo color, pero el reflejo de la lámpara es más nítido, o más débil, que en el patrón.'
		},
		raking: NOTHING_SEEN.raking,
		loupe: {
			en: 'A closed, smooth surface, shinier or duller than the master.',
			es: 'Una superficie cerrada y lisa, más brillante o más opaca que el patrón.'
		},
		section: NOTHING_SEEN.section
	},
	'colour-shift': {
		grows: 'strength',
		plain: {
			en: 'The whole face has turned browner, more so towards one side.',
			es: 'Toda la cara se volvió más café, más hacia un lado.'
		},
		raking: NOTHING_SEEN.raking,
		loupe: {
			en: 'An even brown tone; the film is smooth and closed.',
			es: 'Un tono café parejo; la película es lisa y cerrada.'
		},
		section: NOTHING_SEEN.section
	},
	'soft-film': {
		grows: 'count',
		plain: {
			en: 'Narrow dents, and dull smears where a cloth was drawn across.',
			es: 'Hendiduras angostas y franjas opacas donde se pasó un trapo.'
		},
		raking: {
			en: 'Long dents with a pushed-up rim.',
			es: 'Hendiduras largas de borde empujado hacia arriba.'
		},
		loupe: {
			en: 'A smooth long dent: the film gave way and did not break.',
			es: 'Una hendidura larga y lisa: la película cedió sin romperse.'
		},
		section: {
			en: 'The film is pressed down in the middle and pushed up beside it, without a crack.',
			es: 'La película está hundida al centro y empujada hacia arriba a los lados, sin grieta.'
		}
	},
	'over-cure': {
		grows: 'count',
		plain: {
			en: 'Dark, forking lines on a film that has turned brown.',
			es: 'Líneas oscuras que se bifurcan sobre una película que se volvió café.'
		},
		raking: {
			en: 'Sharp lines cut into the film.',
			es: 'Líneas agudas que cortan la película.'
		},
		loupe: {
			en: 'Open cracks with sharp borders, forking.',
			es: 'Grietas abiertas de bordes agudos, que se bifurcan.'
		},
		section: {
			en: 'Cracks run through the film and stop at the substrate.',
			es: 'Las grietas atraviesan la película y se detienen en el sustrato.'
		}
	}
} satisfies Record<string, Look>;

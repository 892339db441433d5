import { sheetWindow } from '../../plan/situation';
import { shopWindow } from '../../shop/shop';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

/** As the data sheet says; where it is silent, as the shop does. */
export default {
	id: 'cap-pressure',
	station: 'spraying',
	competency: 'spraying',
	skill: 'C9',
	title: { en: 'Pressure at the air cap', es: 'Presión en la boquilla de aire' },
	why: {
		en: 'Air at the cap breaks the paint into drops. Too little leaves them coarse, too much dries them and throws them past the part.',
		es: 'El aire en la boquilla rompe la pintura en gotas. Muy poco las deja gruesas; demasiado las seca y las lanza fuera de la pieza.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: commonPractice,
	lesson: 'gun-set-up#cap-pressure',
	breaks: { low: ['orange-peel', 'mottling'], high: ['dry-spray', 'banding', 'blushing'] },
	outcome: {
		en: 'Too low: orange peel. Too high: fog, a dry film and a split fan.',
		es: 'Muy baja: piel de naranja. Muy alta: niebla, película seca y abanico partido.'
	},
	evidence: {
		en: 'Read the test cap with the trigger pulled; spray a pattern on paper.',
		es: 'Lea la boquilla de prueba con el gatillo apretado; aplique un patrón en papel.'
	},
	field: 'cap-pressure',
	applies: () => true,
	expects(seen) {
		const { min, max } = sheetWindow(seen, 'cap-pressure') ?? shopWindow(seen.shop, 'gun.cap-pressure');
		return { kind: 'range', min, max, amber: 2000 };
	}
} satisfies Rule;

import { shopWindow } from '../../shop/shop';
import { commonPractice } from '../../sources/provenance';
import { millimetres } from '../../units/construct';
import type { Rule } from '../rule';
import { toBlast } from './blasting';

export default {
	id: 'blast-stand-off',
	station: 'preparation',
	competency: 'preparation',
	skill: 'C7',
	title: { en: 'Nozzle at the set stand-off', es: 'La boquilla a su distancia' },
	why: {
		en: 'Close in, the blast digs grooves and embeds grain; far off, it has lost its bite and leaves shiny patches.',
		es: 'De cerca, el chorro cava surcos y clava grano; de lejos, perdió su fuerza y deja zonas brillantes.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'blast-settings#blast-stand-off',
	breaks: { low: ['grit-inclusion', 'pinpoint-rust'], high: ['flaking'] },
	outcome: {
		en: 'Near: grooves and grain in the surface. Far: patches without key.',
		es: 'Cerca: surcos y grano en la superficie. Lejos: zonas sin anclaje.'
	},
	evidence: {
		en: 'Tilt the part under raking light: grooves or shiny patches show.',
		es: 'Incline la pieza bajo luz rasante: se ven surcos o zonas brillantes.'
	},
	field: 'blast-standoff',
	applies: toBlast,
	expects({ shop }) {
		return { kind: 'range', ...shopWindow(shop, 'blast.stand-off'), amber: millimetres(25) };
	}
} satisfies Rule;

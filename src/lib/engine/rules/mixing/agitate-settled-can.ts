import { sheetWindow } from '../../plan/situation';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'agitate-settled-can',
	station: 'mixing',
	competency: 'mixing',
	skill: 'C8',
	title: { en: 'Agitate the can before use', es: 'Agitar la lata antes de usarla' },
	why: {
		en: 'Solids sink to the bottom. What you pour from an unstirred can has the wrong solids, colour and wear.',
		es: 'Los sólidos se van al fondo. Lo que se vierte de una lata sin agitar tiene sólidos, color y desgaste equivocados.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: commonPractice,
	lesson: 'lot-and-can#agitate-settled-can',
	breaks: { low: ['mottling', 'gloss-off', 'colour-shift'], high: ['pinholes'] },
	outcome: {
		en: 'Too short: mottled colour, gloss off, a film without slip or hardness. Too long: foam and pinholes.',
		es: 'Muy corto: color moteado, brillo fuera, película sin deslizamiento ni dureza. Muy largo: espuma y poros.'
	},
	evidence: {
		en: 'Scrape the bottom of the can with a stick: it must come up clean.',
		es: 'Raspe el fondo de la lata con una varilla: debe salir limpia.'
	},
	field: 'agitate-time',
	applies: (seen) => sheetWindow(seen, 'agitate') !== undefined,
	expects(seen) {
		const { min, max } = sheetWindow(seen, 'agitate')!;
		return { kind: 'range', min, max, amber: min.value * 0.2 };
	}
} satisfies Rule;

import { sheetWindow } from '../../plan/situation';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'number-of-coats',
	station: 'spraying',
	competency: 'spraying',
	skill: 'C10',
	title: { en: 'As many coats as the sheet says', es: 'Tantas manos como diga la hoja' },
	why: {
		en: 'Solvent can only leave through so much wet film. The same film in fewer, heavier coats traps it; in more, it builds too thick.',
		es: 'El solvente solo puede salir a través de cierta película húmeda. La misma película en menos manos pesadas lo atrapa; en más manos queda gruesa.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: commonPractice,
	lesson: 'wet-film#number-of-coats',
	breaks: { low: ['solvent-pop', 'holiday', 'pinpoint-rust'], high: ['over-thick', 'over-cure'] },
	outcome: {
		en: 'Too few: burst bubbles or a thin film. Too many: a part that no longer fits.',
		es: 'Muy pocas: burbujas reventadas o película delgada. Demasiadas: una pieza que ya no encaja.'
	},
	evidence: {
		en: 'Count the coats in the log; measure the film on the witness panel.',
		es: 'Cuente las manos en el registro; mida la película en el panel testigo.'
	},
	field: 'coats',
	applies: (seen) => sheetWindow(seen, 'coats') !== undefined,
	expects(seen) {
		const { min, max } = sheetWindow(seen, 'coats')!;
		return { kind: 'range', min, max, amber: 0 };
	}
} satisfies Rule;

import { sheetWindow } from '../../plan/situation';
import { drawnFilm } from '../../plan/wanted-film';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';
import { askOr } from './dangers';

export default {
	id: 'film-within-sheet',
	station: 'intake',
	competency: 'intake',
	skill: 'C4',
	title: {
		en: 'The drawn film is one the sheet can give',
		es: 'La película del plano es una que la hoja puede dar'
	},
	why: {
		en: 'Outside the sheet’s window the coating has not been shown to hold: thinner wears and rusts through, thicker pops and cracks.',
		es: 'Fuera de la ventana de la hoja nadie ha demostrado que el recubrimiento aguante: más delgada se gasta y se oxida, más gruesa hierve y se agrieta.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: commonPractice,
	lesson: 'ticket-and-sheet#film-within-sheet',
	breaks: { wrong: ['over-thick', 'over-cure', 'pinpoint-rust', 'solvent-pop'] },
	outcome: {
		en: 'The film is laid where the coating was never meant to work.',
		es: 'Se aplica una película con la que el recubrimiento nunca debía trabajar.'
	},
	evidence: {
		en: 'Lay the drawing beside the data sheet and compare both windows.',
		es: 'Ponga el plano junto a la hoja técnica y compare las dos ventanas.'
	},
	field: 'decision',
	applies: (seen) => {
		const drawn = drawnFilm(seen);
		const sheet = sheetWindow(seen, 'dry-film');
		return (
			drawn !== undefined &&
			sheet !== undefined &&
			(drawn.max.value < sheet.min.value || drawn.min.value > sheet.max.value)
		);
	},
	expects: (seen) => ({ kind: 'one-of', options: askOr(seen) })
} satisfies Rule;

import { sheetWindow, type Situation } from '../../plan/situation';
import { constant } from '../../plan/trace';
import { commonPractice } from '../../sources/provenance';
import { fraction } from '../../units/construct';
import type { Rule } from '../rule';

const NONE = constant(
	'thinner-share',
	'fraction',
	fraction(0),
	{ origin: 'data-sheet', verification: { read: 'the sheet names no thinner' } },
	{ en: 'The sheet allows no thinner', es: 'La hoja no permite diluyente' }
);

const most = (seen: Situation) => (seen.sheet.thinner === null ? NONE : sheetWindow(seen, 'thinner')?.max);

export default {
	id: 'thinner-share',
	station: 'mixing',
	competency: 'mixing',
	skill: 'C8',
	title: { en: 'No more thinner than the sheet permits', es: 'No más diluyente del que permite la hoja' },
	why: {
		en: 'Thinner leaves the film again: every share of it makes the same wet film dry thinner and run sooner.',
		es: 'El diluyente se va de la película: cada parte hace que la misma película húmeda seque más delgada y escurra antes.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: commonPractice,
	lesson: 'thinning#thinner-share',
	breaks: { low: ['orange-peel'], high: ['runs', 'thin-edges', 'holiday'] },
	outcome: {
		en: 'Too much: runs, thin edges, see-through film. Set too low: orange peel nobody needed to have.',
		es: 'Demasiado: escurridos, bordes delgados, película transparente. Muy bajo: piel de naranja evitable.'
	},
	evidence: {
		en: 'Compare scale or cup log with the sheet’s line.',
		es: 'Compare el registro de balanza o vaso con la línea de la hoja.'
	},
	field: 'thinner-share',
	applies: (seen) => most(seen) !== undefined,
	expects(seen) {
		const limit = most(seen)!;
		// the question asks for the limit itself, so a smaller share is a misreading and not merely careful
		return { kind: 'range', min: limit, max: limit, amber: 0.01 };
	}
} satisfies Rule;

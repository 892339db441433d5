import { sheetWindow } from '../../plan/situation';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'coat-interval',
	station: 'spraying',
	competency: 'spraying',
	skill: 'C10',
	title: { en: 'Wait between coats as the sheet says', es: 'Esperar entre manos lo que dice la hoja' },
	why: {
		en: 'The next coat must find the last one tacky: still open enough to knit, set enough to hold it.',
		es: 'La siguiente mano debe encontrar la anterior mordiente: abierta para unirse, firme para sostenerla.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: commonPractice,
	lesson: 'second-coat#coat-interval',
	breaks: { low: ['runs', 'solvent-pop'], high: ['intercoat-peel', 'wrinkling', 'dry-spray'] },
	outcome: {
		en: 'Too soon: runs and burst bubbles. Too late: coats that peel apart or wrinkle.',
		es: 'Muy pronto: escurridos y burbujas reventadas. Muy tarde: manos que se separan o se arrugan.'
	},
	evidence: {
		en: 'Touch the film on the masking tape, never on the part; read the times in the log.',
		es: 'Toque la película sobre la cinta, nunca en la pieza; lea las horas del registro.'
	},
	field: 'coat-interval',
	applies: (seen) =>
		sheetWindow(seen, 'interval') !== undefined && (sheetWindow(seen, 'coats')?.max.value ?? 0) > 1,
	expects(seen) {
		const { min, max } = sheetWindow(seen, 'interval')!;
		return { kind: 'range', min, max, amber: 60 };
	}
} satisfies Rule;

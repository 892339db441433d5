import { sheetWindow } from '../../plan/situation';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'strainer-opening',
	station: 'mixing',
	competency: 'mixing',
	skill: 'C8',
	title: { en: 'Strain through the opening the sheet names', es: 'Colar con la abertura que indica la hoja' },
	why: {
		en: 'The strainer holds back skin and lumps. Finer than the filler it takes the filler out; coarser it lets lumps through.',
		es: 'El colador retiene nata y grumos. Más fino que la carga, se queda con ella; más grueso, deja pasar los grumos.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: commonPractice,
	lesson: 'thinning#strainer-opening',
	breaks: { low: ['gloss-off', 'mottling'], high: ['dirt', 'gel-bits'] },
	outcome: {
		en: 'Too fine: filler missing, wrong gloss and wear. Too coarse: nibs and a blocked tip.',
		es: 'Muy fino: falta la carga, brillo y desgaste equivocados. Muy grueso: grumos y boquilla tapada.'
	},
	evidence: {
		en: 'Read the number on the cone in the waste; look at what it held back.',
		es: 'Lea el número del cono en el residuo; mire qué retuvo.'
	},
	field: 'strainer',
	applies: (seen) => sheetWindow(seen, 'strainer') !== undefined,
	expects(seen) {
		const { min, max } = sheetWindow(seen, 'strainer')!;
		return { kind: 'range', min, max, amber: 5e-6 };
	}
} satisfies Rule;

import { sheetWindow } from '../../plan/situation';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'stir-time',
	station: 'mixing',
	competency: 'mixing',
	skill: 'C8',
	title: { en: 'Stir until both parts are one', es: 'Agitar hasta que las dos partes sean una' },
	why: {
		en: 'Hardener that is not stirred in leaves streaks that never set. Whipping draws in air and moisture.',
		es: 'El endurecedor mal incorporado deja vetas que nunca curan. Batir mete aire y humedad.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: commonPractice,
	lesson: 'measuring#stir-time',
	breaks: { low: ['soft-film', 'mottling'], high: ['pinholes'] },
	outcome: {
		en: 'Too short: streaks and soft spots. Too long or too fast: foam and pinholes.',
		es: 'Muy corto: vetas y zonas blandas. Muy largo o muy rápido: espuma y poros.'
	},
	evidence: {
		en: 'Look for streaks on a stick wiped along the wall of the cup; read the mix log.',
		es: 'Busque vetas en una varilla pasada por la pared del vaso; lea el registro de mezcla.'
	},
	field: 'stir-time',
	applies: (seen) => sheetWindow(seen, 'stir') !== undefined,
	expects(seen) {
		const { min, max } = sheetWindow(seen, 'stir')!;
		return { kind: 'range', min, max, amber: 30 };
	}
} satisfies Rule;

import { sheetValue } from '../../plan/situation';
import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'cross-cut-class',
	station: 'inspection',
	competency: 'inspection',
	skill: 'C12',
	title: {
		en: 'The worst cross-cut class comes from the data sheet',
		es: 'La peor clase de corte cruzado la da la hoja técnica'
	},
	why: {
		en: 'ISO 2409 counts 0 as best, ASTM D3359 5B: a limit from one scale is wrong on the other. Only the sheet says what is good enough.',
		es: 'En ISO 2409 lo mejor es 0; en ASTM D3359, 5B: un límite de una escala es falso en la otra. Solo la hoja dice qué basta.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: cite('iso-2409', 'classes 0 to 5', { read: 'stored extract of the 2020 edition' }),
	lesson: 'cure-and-adhesion#cross-cut-class',
	breaks: { high: ['flaking', 'intercoat-peel'] },
	outcome: {
		en: 'Too high: a film that comes off in use. Too low: sound parts stripped.',
		es: 'Muy alto: la película se desprende en uso. Muy bajo: se decapan piezas buenas.'
	},
	evidence: {
		en: 'Find the kept witness panel and grade its lattice again, naming the scale.',
		es: 'Busque el panel testigo guardado y clasifique otra vez su retícula, nombrando la escala.'
	},
	field: 'adhesion-class',
	applies: (seen) => sheetValue(seen, 'adhesion-class') !== undefined,
	expects(seen) {
		const worst = sheetValue(seen, 'adhesion-class')!;
		return { kind: 'range', min: worst, max: worst, amber: 0 };
	}
} satisfies Rule;

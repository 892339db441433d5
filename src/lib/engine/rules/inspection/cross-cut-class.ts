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
		en: 'ISO 2409 counts 0 as best, the tape method of ASTM D3359 counts 5B as best: a limit remembered from one scale is wrong on the other. Neither says what is good enough; the sheet does.',
		es: 'ISO 2409 cuenta 0 como lo mejor y el método de cinta de ASTM D3359 cuenta 5B como lo mejor: un límite recordado de una escala es falso en la otra. Ninguna dice qué basta; lo dice la hoja.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: cite('iso-2409', 'classes 0 to 5', { read: 'stored extract of the 2020 edition' }),
	lesson: 'inspection#cross-cut-class',
	breaks: { high: ['flaking', 'intercoat-peel'] },
	outcome: {
		en: 'A limit set too high releases a film that comes off in use; set too low, sound parts are stripped.',
		es: 'Un límite muy alto libera una película que se desprende en uso; muy bajo, se decapan piezas buenas.'
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

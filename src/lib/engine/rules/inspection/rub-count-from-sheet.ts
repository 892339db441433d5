import { sheetValue } from '../../plan/situation';
import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';

/** Silent where the sheet states no count: the test method leaves solvent, count and what passes open. */
export default {
	id: 'rub-count-from-sheet',
	station: 'inspection',
	competency: 'inspection',
	skill: 'C12',
	title: {
		en: 'Solvent and number of rubs come from the data sheet',
		es: 'El solvente y el número de frotes los da la hoja técnica'
	},
	why: {
		en: 'The test method fixes neither solvent nor count nor what passes; only the sheet says how many double rubs a cured film takes.',
		es: 'El método de prueba no fija solvente, número ni qué pasa; solo la hoja dice cuántos frotes dobles aguanta la película curada.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: cite('astm-d5402', 'solvent, count and what passes are left to the parties', {
		read: 'text of D5402-93(99)'
	}),
	lesson: 'cure-and-adhesion#rub-count-from-sheet',
	breaks: { low: ['soft-film'] },
	outcome: {
		en: 'Too few pass an uncured film; too many condemn a cured one.',
		es: 'Muy pocos dejan pasar una película sin curar; demasiados rechazan una curada.'
	},
	evidence: {
		en: 'Rub the kept witness panel with the solvent and count of the sheet and look at the cloth and the gloss.',
		es: 'Frote el panel testigo guardado con el solvente y el número de la hoja y mire el trapo y el brillo.'
	},
	field: 'rubs',
	applies: (seen) => sheetValue(seen, 'solvent-rubs') !== undefined,
	expects(seen) {
		const rubs = sheetValue(seen, 'solvent-rubs')!;
		return { kind: 'range', min: rubs, max: rubs, amber: 0 };
	}
} satisfies Rule;

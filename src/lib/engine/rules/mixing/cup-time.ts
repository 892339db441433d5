import { sheetWindow } from '../../plan/situation';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'cup-time',
	station: 'mixing',
	competency: 'mixing',
	skill: 'C8',
	title: { en: 'Check the flow with the sheet’s cup', es: 'Comprobar la fluidez con la copa de la hoja' },
	why: {
		en: 'Flow decides how the drops join. The seconds only mean something in the cup and at the temperature the sheet names.',
		es: 'La fluidez decide cómo se unen las gotas. Los segundos solo valen con la copa y la temperatura que indica la hoja.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: commonPractice,
	lesson: 'thinning#cup-time',
	breaks: { low: ['runs', 'thin-edges'], high: ['orange-peel', 'dry-spray'] },
	outcome: {
		en: 'Too short: runs. Too long: orange peel and a dry look.',
		es: 'Muy corto: escurridos. Muy largo: piel de naranja y aspecto seco.'
	},
	evidence: {
		en: 'Run the cup again at the noted temperature; two readings agree within 5 %.',
		es: 'Repita la copa a la temperatura anotada; dos lecturas coinciden dentro del 5 %.'
	},
	field: 'cup-time',
	applies: (seen) => sheetWindow(seen, 'viscosity') !== undefined,
	expects(seen) {
		const { min, max } = sheetWindow(seen, 'viscosity')!;
		return { kind: 'range', min, max, amber: 2 };
	}
} satisfies Rule;

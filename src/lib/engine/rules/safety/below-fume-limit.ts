import { cureTemperature } from '../../plan/cure-window';
import { sheetValue } from '../../plan/situation';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'below-fume-limit',
	station: 'curing',
	competency: 'safety',
	skill: 'C11',
	title: {
		en: 'The cure stays below where the coating gives off fume',
		es: 'El curado queda debajo de donde el recubrimiento desprende humo'
	},
	why: {
		en: 'Past this temperature the film breaks down into fume that makes people ill. A 300 °F cure set as 300 °C gets there.',
		es: 'Pasada esta temperatura la película se descompone en humo que enferma. Un curado de 300 °F puesto como 300 °C llega ahí.'
	},
	severity: 'safety-stop',
	authority: 'safety-data-sheet',
	provenance: commonPractice,
	lesson: 'soak#below-fume-limit',
	breaks: { high: ['over-cure', 'colour-shift'] },
	outcome: {
		en: 'Fume in the shop, fever and cough that night, and a ruined film.',
		es: 'Humo en el taller, fiebre y tos esa noche, y una película arruinada.'
	},
	evidence: {
		en: 'Read the highest air and part temperature on the oven chart, in the unit the sheet prints.',
		es: 'Lea la temperatura más alta de aire y pieza en el registro del horno, en la unidad de la hoja.'
	},
	field: 'cure-temperature',
	applies: (seen) => cureTemperature(seen) !== undefined && sheetValue(seen, 'fume-above') !== undefined,
	expects(seen) {
		return { kind: 'below', max: sheetValue(seen, 'fume-above')!, amber: 0 };
	}
} satisfies Rule;

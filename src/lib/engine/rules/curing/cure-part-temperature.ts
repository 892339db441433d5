import { cureTemperature } from '../../plan/cure-window';
import { commonPractice } from '../../sources/provenance';
import { degrees } from '../../units/construct';
import type { Rule } from '../rule';

export default {
	id: 'cure-part-temperature',
	station: 'curing',
	competency: 'curing',
	skill: 'C11',
	title: {
		en: 'The part cures inside the sheet’s window',
		es: 'La pieza cura dentro de la ventana de la hoja'
	},
	why: {
		en: 'The film links up only when the metal or plastic under it reaches the temperature on the sheet.',
		es: 'La película solo cura cuando el metal o plástico de debajo llega a la temperatura de la hoja.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: commonPractice,
	lesson: 'soak#cure-part-temperature',
	breaks: {
		low: ['soft-film', 'gloss-off'],
		high: ['over-cure', 'colour-shift', 'gloss-off', 'outgassing-blisters']
	},
	outcome: {
		en: 'Too cool: the film dents under a nail and comes off on a solvent rag. Too hot: it darkens, turns brittle and cracks.',
		es: 'Muy fría: se marca con la uña y se va con el trapo con solvente. Muy caliente: queda oscura, quebradiza y agrietada.'
	},
	evidence: {
		en: 'Read the part thermocouples on the oven chart, not the display, in the unit the sheet prints; then rub the witness panel.',
		es: 'Lea los termopares de pieza en el registro del horno, no la pantalla, en la unidad de la hoja; luego frote el panel testigo.'
	},
	field: 'cure-temperature',
	applies: (seen) => cureTemperature(seen) !== undefined,
	expects(seen) {
		return { kind: 'range', ...cureTemperature(seen)!, amber: degrees(5) };
	}
} satisfies Rule;

import { cureTemperature } from '../../plan/cure-window';
import { lowestCap } from '../../plan/part-cap';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'cure-below-part-limit',
	station: 'curing',
	competency: 'curing',
	skill: 'C11',
	title: {
		en: 'The cure stays below what the part can take',
		es: 'El curado queda debajo de lo que aguanta la pieza'
	},
	why: {
		en: 'Past its limit a polymer sags, a temper is lost and anodising cracks. None of that comes back, however good the film is.',
		es: 'Pasado su límite un polímero se deforma, se pierde un temple y el anodizado se agrieta. Nada de eso vuelve, por buena que quede la película.'
	},
	severity: 'quality',
	authority: 'part-limit',
	provenance: commonPractice,
	lesson: 'soak#cure-below-part-limit',
	breaks: { high: ['distorted-part', 'anodise-crazing'] },
	outcome: {
		en: 'The customer’s part is bent, softened or crazed and cannot be saved.',
		es: 'La pieza del cliente queda doblada, ablandada o agrietada y no se puede salvar.'
	},
	evidence: {
		en: 'Compare the highest reading of the thinnest or most limited part on the chart with the limit on the ticket.',
		es: 'Compare la lectura más alta de la pieza más delgada o limitada en el registro con el límite de la orden.'
	},
	field: 'cure-temperature',
	applies: (seen) => cureTemperature(seen) !== undefined && lowestCap(seen) !== undefined,
	expects(seen) {
		return { kind: 'at-most', max: lowestCap(seen)!, amber: 0 };
	}
} satisfies Rule;

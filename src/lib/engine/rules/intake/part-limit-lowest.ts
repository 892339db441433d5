import { everyMaterialSettled, lowestCap, lowestMaterialCap } from '../../plan/part-cap';
import { workedOut } from '../../plan/trace';
import { shopValue } from '../../shop/shop';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

/** A tempered part may lie lower still: `temper-margin` says so, and the low end here leaves room for it. */
export default {
	id: 'part-limit-lowest',
	station: 'intake',
	competency: 'intake',
	skill: 'C4',
	title: { en: 'The lowest limit of all parts counts', es: 'Cuenta el límite más bajo de todas las piezas' },
	why: {
		en: 'A knob, seal or thin polymer cover reaches oven heat like the rest, so the one that stands least sets the limit. The customer’s written limit replaces the materials’ own.',
		es: 'Una perilla, un sello o una tapa de polímero se calientan como lo demás; lo que menos aguanta fija el límite. Un límite escrito del cliente reemplaza los del material.'
	},
	severity: 'quality',
	authority: 'part-limit',
	provenance: commonPractice,
	lesson: 'heat-limits#part-limit-lowest',
	breaks: { high: ['distorted-part', 'anodise-crazing'] },
	outcome: {
		en: 'Too high: the part warps or softens. Too low: a good cure refused.',
		es: 'Muy alto: la pieza se deforma o ablanda. Muy bajo: se descarta un curado bueno.'
	},
	evidence: {
		en: 'List every material and fitted item with its limit and compare with the oven chart.',
		es: 'Haga la lista de materiales y piezas montadas con su límite y compárela con el registro del horno.'
	},
	field: 'part-cap',
	applies: (seen) => everyMaterialSettled(seen) && lowestMaterialCap(seen) !== undefined,
	expects(seen) {
		const max = lowestMaterialCap(seen)!;
		const lowest = lowestCap(seen)!;
		const rounding = shopValue(seen.shop, 'part-cap.rounding');
		const label = { en: 'Lowest limit less rounding', es: 'Límite más bajo menos redondeo' };
		const min = workedOut('part-limit-lowest', 'temperature', lowest.value - rounding.value, label, {
			lowest,
			rounding
		});
		return { kind: 'range', min, max, amber: 0 };
	}
} satisfies Rule;

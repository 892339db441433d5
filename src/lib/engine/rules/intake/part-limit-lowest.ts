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
		en: 'A knob, a seal or a thin polymer cover in the same load reaches oven heat like the rest. The one that stands least sets the limit; a limit the customer wrote replaces those of the materials.',
		es: 'Una perilla, un sello o una tapa de polímero en la misma carga llega al calor del horno como lo demás. Lo que menos aguanta fija el límite; un límite escrito por el cliente reemplaza los de los materiales.'
	},
	severity: 'quality',
	authority: 'part-limit',
	provenance: commonPractice,
	lesson: 'intake#part-limit-lowest',
	breaks: { high: ['distorted-part', 'anodise-crazing'] },
	outcome: {
		en: 'Read too high, the part warps or loses temper. Read too low, a cure that fits is turned down.',
		es: 'Si se lee muy alto, la pieza se deforma o pierde temple. Si se lee muy bajo, se descarta un curado que sí cabe.'
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

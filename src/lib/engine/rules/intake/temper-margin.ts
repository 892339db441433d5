import { everyMaterialSettled, temperCap } from '../../plan/part-cap';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'temper-margin',
	station: 'intake',
	competency: 'intake',
	skill: 'C4',
	title: {
		en: 'Hardened parts stay below their temper',
		es: 'Las piezas templadas quedan debajo de su revenido'
	},
	why: {
		en: 'A hardened part that gets as hot as it was tempered goes on tempering: a spring clip loses its force and nothing shows.',
		es: 'Una pieza templada que se calienta como en su revenido sigue reviniendo: un clip de resorte pierde su fuerza y no se ve nada.'
	},
	severity: 'quality',
	authority: 'part-limit',
	provenance: commonPractice,
	lesson: 'heat-limits#temper-margin',
	breaks: { high: ['distorted-part'] },
	outcome: {
		en: 'The part is softer than drawn and looks perfect.',
		es: 'La pieza queda más blanda que en el plano y se ve perfecta.'
	},
	evidence: {
		en: 'Compare the hottest reading of the oven chart with the tempering temperature, and measure hardness.',
		es: 'Compare la lectura más alta del horno con la temperatura de revenido, y mida la dureza.'
	},
	field: 'part-cap',
	// beside a part nobody can name, its temper alone would pass for the limit of all
	applies: (seen) => everyMaterialSettled(seen) && temperCap(seen) !== undefined,
	expects(seen) {
		return { kind: 'at-most', max: temperCap(seen)!, amber: 0 };
	}
} satisfies Rule;

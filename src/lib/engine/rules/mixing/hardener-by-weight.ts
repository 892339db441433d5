import { hardenerForBase } from '../../physics/mixing/hardener-for-base';
import { hardenerTolerance } from '../../plan/hardener-tolerance';
import { ratioOn } from '../../plan/ratio-on';
import { constant } from '../../plan/trace';
import { arithmetic, commonPractice } from '../../sources/provenance';
import { grams } from '../../units/construct';
import type { Rule } from '../rule';

export default {
	id: 'hardener-by-weight',
	station: 'mixing',
	competency: 'mixing',
	skill: 'C8',
	title: { en: 'Hardener on the scale', es: 'Endurecedor en la balanza' },
	why: {
		en: 'The film only sets right at the sheet’s ratio. On a scale it is the ratio by weight; a ratio by volume has to be converted with both densities.',
		es: 'La película solo cura bien con la relación de la hoja. En balanza es la relación por peso; una relación por volumen se convierte con ambas densidades.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: commonPractice,
	lesson: 'measuring#hardener-by-weight',
	breaks: { low: ['soft-film', 'amine-bloom'], high: ['over-cure', 'colour-shift'] },
	outcome: {
		en: 'Too little: soft, tacky film. Too much: brittle, yellow, crazed film.',
		es: 'Muy poco: película blanda y pegajosa. Demasiado: película quebradiza, amarilla y fisurada.'
	},
	evidence: {
		en: 'Compare the mix log with the sheet’s ratio; rub a witness panel with solvent.',
		es: 'Compare el registro de mezcla con la relación de la hoja; frote un panel testigo con solvente.'
	},
	field: 'hardener-mass',
	applies: (seen) => ratioOn('mass', seen) !== undefined,
	expects(seen) {
		const base = constant('hardener-by-weight', 'mass', grams(500), arithmetic('amount the question names'), {
			en: 'Base in the scale pan',
			es: 'Base en la balanza'
		});
		const value = hardenerForBase.mass.of({ base, ratio: ratioOn('mass', seen)! });
		return {
			kind: 'computed',
			value,
			tolerance: hardenerTolerance('hardener-by-weight', seen),
			amber: value.value * 0.02
		};
	}
} satisfies Rule;

import { hardenerForBase } from '../../physics/mixing/hardener-for-base';
import { hardenerTolerance } from '../../plan/hardener-tolerance';
import { ratioOn } from '../../plan/ratio-on';
import { constant } from '../../plan/trace';
import { arithmetic, commonPractice } from '../../sources/provenance';
import { millilitres } from '../../units/construct';
import type { Rule } from '../rule';

export default {
	id: 'hardener-by-volume',
	station: 'mixing',
	competency: 'mixing',
	skill: 'C8',
	title: { en: 'Hardener by measuring cup', es: 'Endurecedor con vaso medidor' },
	why: {
		en: 'The film only sets right at the sheet’s ratio. On cups it is the ratio by volume; a ratio by weight has to be converted with both densities.',
		es: 'La película solo cura bien con la relación de la hoja. Con vasos es la relación por volumen; una relación por peso se convierte con ambas densidades.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: commonPractice,
	lesson: 'measuring#hardener-by-volume',
	breaks: { low: ['soft-film', 'amine-bloom'], high: ['over-cure', 'colour-shift'] },
	outcome: {
		en: 'Too little: soft, tacky film. Too much: brittle, yellow, crazed film.',
		es: 'Muy poco: película blanda y pegajosa. Demasiado: película quebradiza, amarilla y fisurada.'
	},
	evidence: {
		en: 'Compare the mix log with the sheet’s ratio; rub a witness panel with solvent.',
		es: 'Compare el registro de mezcla con la relación de la hoja; frote un panel testigo con solvente.'
	},
	field: 'hardener-volume',
	applies: (seen) => ratioOn('volume', seen) !== undefined,
	expects(seen) {
		const base = constant(
			'hardener-by-volume',
			'volume',
			millilitres(500),
			arithmetic('amount the question names'),
			{
				en: 'Base in the cup',
				es: 'Base en el vaso'
			}
		);
		const value = hardenerForBase.volume.of({ base, ratio: ratioOn('volume', seen)! });
		return {
			kind: 'computed',
			value,
			tolerance: hardenerTolerance('hardener-by-volume', seen),
			amber: value.value * 0.02
		};
	}
} satisfies Rule;

import { shopValue } from '../../shop/shop';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'residue-repeats-loop',
	station: 'preparation',
	competency: 'preparation',
	skill: 'C5',
	title: { en: 'Residue sends the part round again', es: 'Si queda residuo, la pieza repite el ciclo' },
	why: {
		en: 'Oil keeps coming until the pores are empty; one wipe hides it. If several rounds have not stopped it, one more will not: somebody else has to decide.',
		es: 'El aceite sigue saliendo hasta vaciar los poros; un paño solo lo esconde. Si varias vueltas no lo pararon, otra tampoco: debe decidir otra persona.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'bake-out#residue-repeats-loop',
	breaks: { wrong: ['outgassing-blisters', 'fisheyes', 'flaking'] },
	outcome: {
		en: 'Oil comes up under the film in the cure: pits and blisters.',
		es: 'El aceite sube bajo la película en el curado: cráteres y ampollas.'
	},
	evidence: {
		en: 'Count the bake-outs on the traveler and wipe the part with a white cloth while warm.',
		es: 'Cuente los desgasificados en la hoja de ruta y pase un paño blanco por la pieza tibia.'
	},
	field: 'residue-action',
	applies: ({ job }) => job.residueLoops > 0,
	expects({ job, shop }) {
		const most = shopValue(shop, 'bake-out.loops').value;
		return { kind: 'one-of', options: [job.residueLoops > most ? 'tell-supervisor' : 'repeat'] };
	}
} satisfies Rule;

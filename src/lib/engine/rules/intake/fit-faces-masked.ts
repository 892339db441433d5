import { FEATURES, type Feature } from '../../job/part';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'fit-faces-masked',
	station: 'intake',
	competency: 'intake',
	skill: 'C6',
	title: {
		en: 'Fit faces stay bare, listed or not',
		es: 'Las caras de ajuste quedan sin recubrir, estén o no en la lista'
	},
	why: {
		en: 'Threads, seats, sealing and ground faces were machined to size. A film adds twice its thickness to a diameter and about four times to a thread, so they are masked even where the customer’s list forgot them.',
		es: 'Roscas, asientos, caras de sellado y de tierra se mecanizaron a medida. Una película suma el doble de su espesor a un diámetro y unas cuatro veces a una rosca, así que se enmascaran aunque la lista del cliente las haya olvidado.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'intake#fit-faces-masked',
	breaks: { low: ['over-thick'], high: ['holiday'], wrong: ['holiday'] },
	outcome: {
		en: 'Too little masked: the part does not go together. Too much: a bare face rusts.',
		es: 'Si falta máscara, la pieza no ensambla. Si sobra, una cara desnuda se oxida.'
	},
	evidence: {
		en: 'Try the thread gauge and the mating part, and count masks in and out.',
		es: 'Pruebe el calibre de rosca y la pieza que encaja, y cuente las máscaras puestas y retiradas.'
	},
	field: 'mask-features',
	applies: () => true,
	expects({ job }) {
		const present = new Set(job.parts.flatMap(({ features }) => features));
		const all = Object.keys(FEATURES) as Feature[];
		return present.size
			? { kind: 'all-of', options: [...present], not: all.filter((feature) => !present.has(feature)) }
			: { kind: 'none-of', options: all };
	}
} satisfies Rule;

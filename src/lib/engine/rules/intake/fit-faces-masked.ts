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
		en: 'Threads, seats, sealing and ground faces are machined to size; film adds twice its thickness to a diameter, about four times to a thread.',
		es: 'Roscas, asientos y caras de sellado y tierra se mecanizan a medida; la película suma el doble de su espesor a un diámetro y unas cuatro veces a una rosca.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'masking#fit-faces-masked',
	breaks: { low: ['over-thick'], high: ['holiday'], wrong: ['holiday'] },
	outcome: {
		en: 'Too little masked: the part does not fit. Too much: a bare face rusts.',
		es: 'Si falta máscara, no ensambla. Si sobra, sale óxido.'
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

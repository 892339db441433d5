import { cite } from '../../sources/provenance';
import { toBlast } from '../preparation/blasting';
import type { Rule } from '../rule';

export default {
	id: 'cabinet-sound-before-blasting',
	station: 'preparation',
	competency: 'safety',
	skill: 'C7',
	title: {
		en: 'A torn cabinet is repaired before anybody blasts',
		es: 'Una cabina rota se repara antes de granallar'
	},
	why: {
		en: 'Air flowing inward at every gap keeps dust in, and the fan clears it before the door opens. A torn seal lets it out; a dust mask is no substitute for the cabinet.',
		es: 'El aire que entra por cada rendija retiene el polvo y el extractor lo limpia antes de abrir. Un sello roto lo deja salir; una mascarilla no sustituye la cabina.'
	},
	severity: 'safety-stop',
	authority: 'law',
	provenance: cite('osha-1910-94', '(a)(3), (5)', {
		read: 'state twins: inward flow at every opening, exhaust until the dust has cleared'
	}),
	lesson: 'blasting-safely#cabinet-sound-before-blasting',
	breaks: {},
	outcome: {
		en: 'Everyone in the room breathes blast dust.',
		es: 'Todos en el cuarto respiran polvo de granallado.'
	},
	evidence: {
		en: 'Run the fan and hold a strip of tissue at seal, gloves and window: it must be drawn inward.',
		es: 'Encienda el extractor y acerque una tira de papel a sello, guantes y mirilla: debe ser jalada hacia adentro.'
	},
	field: 'cabinet-action',
	applies: toBlast,
	expects({ job }) {
		return { kind: 'one-of', options: [job.bench.cabinet === 'sound' ? 'blast' : 'repair'] };
	}
} satisfies Rule;

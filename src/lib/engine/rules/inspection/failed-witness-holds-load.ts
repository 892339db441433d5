import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'failed-witness-holds-load',
	station: 'inspection',
	competency: 'inspection',
	skill: 'C12',
	title: {
		en: 'A failed witness panel holds the whole load',
		es: 'Un panel testigo que falla retiene toda la carga'
	},
	why: {
		en: 'The panel went through the same wash, mix and oven as every part beside it. Parts that look good have the same film.',
		es: 'El panel pasó por el mismo lavado, mezcla y horno que cada pieza a su lado. Las piezas que se ven bien tienen la misma película.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'cure-and-adhesion#failed-witness-holds-load',
	breaks: { wrong: ['flaking', 'soft-film', 'intercoat-peel'] },
	outcome: {
		en: 'Parts with a film that peels or stays soft reach the customer.',
		es: 'Al cliente le llegan piezas con película que se desprende o queda blanda.'
	},
	evidence: {
		en: 'Look up the witness result of that oven load and who released it after that.',
		es: 'Busque el resultado del testigo de esa carga y quién la liberó después.'
	},
	field: 'failed-witness',
	applies: () => true,
	expects: () => ({ kind: 'one-of', options: ['hold'] })
} satisfies Rule;

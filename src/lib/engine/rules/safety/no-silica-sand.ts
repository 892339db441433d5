import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'no-silica-sand',
	station: 'preparation',
	competency: 'safety',
	skill: 'C7',
	title: { en: 'No silica sand in the cabinet', es: 'Nada de arena de sílice en la cabina' },
	why: {
		en: 'Sand breaks into dust that scars the lungs for good, and no cabinet is tight enough for it. Lock it away and tell the supervisor.',
		es: 'La arena se rompe en polvo que deja cicatrices en los pulmones, y ninguna cabina cierra tanto. Guárdela bajo llave y avise al supervisor.'
	},
	severity: 'safety-stop',
	authority: 'shop',
	provenance: cite('niosh-silica-abrasive', 'advice of 1974: no abrasive above 1 % free silica'),
	lesson: 'blasting-safely#no-silica-sand',
	breaks: {},
	outcome: {
		en: 'Silica dust in the shop air: silicosis years later.',
		es: 'Polvo de sílice en el aire del taller: silicosis años después.'
	},
	evidence: {
		en: 'Read the bag or drum label of what was poured into the cabinet.',
		es: 'Lea la etiqueta del saco o tambor de lo que se echó en la cabina.'
	},
	field: 'blast-media',
	applies: () => true,
	expects: () => ({ kind: 'none-of', options: ['silica-sand'] })
} satisfies Rule;

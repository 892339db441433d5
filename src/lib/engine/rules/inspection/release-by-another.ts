import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'release-by-another',
	station: 'inspection',
	competency: 'inspection',
	skill: 'C14',
	title: { en: 'Somebody who did not spray it releases it', es: 'Libera alguien que no lo aplicó' },
	why: {
		en: 'After an hour at the gun you see what you meant to do. A second person sees what is there.',
		es: 'Tras una hora con la pistola uno ve lo que quiso hacer. Otra persona ve lo que hay.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'release#release-by-another',
	breaks: { wrong: ['holiday', 'runs', 'dirt'] },
	outcome: {
		en: 'The customer finds what a second look would have found.',
		es: 'El cliente encuentra lo que una segunda mirada habría encontrado.'
	},
	evidence: {
		en: 'Compare the name under the release with the name at the gun on the ticket.',
		es: 'Compare el nombre de la liberación con el de quien aplicó en la orden.'
	},
	field: 'release-by',
	applies: () => true,
	expects: () => ({ kind: 'one-of', options: ['other'] })
} satisfies Rule;

import { constant } from '../../plan/trace';
import { cite } from '../../sources/provenance';
import { minutes } from '../../units/construct';
import type { Rule } from '../rule';

const TEXT = cite('astm-f22', 'breaks within 1 min fail', { read: 'text of F22-02(07)' });

export default {
	id: 'water-break-whole-minute',
	station: 'preparation',
	competency: 'preparation',
	skill: 'C5',
	title: { en: 'The water film stays whole for a minute', es: 'La película de agua queda entera un minuto' },
	why: {
		en: 'Water draws back slowly from oil you cannot see. A film that breaks within the minute means the part is not clean; soap left on it fakes a pass.',
		es: 'El agua se retira despacio del aceite que no se ve. Si la película se rompe dentro del minuto, la pieza no está limpia; el jabón que queda da un falso aprobado.'
	},
	severity: 'quality',
	authority: 'tool',
	provenance: TEXT,
	lesson: 'degreasing#water-break-whole-minute',
	breaks: { low: ['fisheyes', 'flaking'] },
	outcome: { en: 'An oily part goes on to the gun.', es: 'Una pieza con aceite sigue hacia la pistola.' },
	evidence: {
		en: 'Repeat the check on a part of the same batch with clean water and a watch.',
		es: 'Repita la prueba en una pieza del mismo lote, con agua limpia y reloj.'
	},
	field: 'water-break-hold',
	applies: () => true,
	expects: () => ({
		kind: 'at-least',
		min: constant('water-break-whole-minute', 'duration', minutes(1), TEXT, {
			en: 'Unbroken for',
			es: 'Sin romperse durante'
		}),
		amber: 15
	})
} satisfies Rule;

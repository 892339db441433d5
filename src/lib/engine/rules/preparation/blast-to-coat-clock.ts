import { commonPractice } from '../../sources/provenance';
import { minutes } from '../../units/construct';
import type { Rule } from '../rule';
import { blastClock } from './blasting';

export default {
	id: 'blast-to-coat-clock',
	station: 'preparation',
	competency: 'preparation',
	skill: 'C7',
	title: { en: 'The clock from blasting to coating', es: 'El reloj de granallar a recubrir' },
	why: {
		en: 'Fresh blasted metal is at its most reactive: steel rusts, aluminium grows its oxide back, copper tarnishes within the hour, and dust and oil settle on all of them.',
		es: 'El metal recién granallado está más reactivo que nunca: el acero se oxida, el aluminio recupera su óxido, el cobre se mancha en una hora, y polvo y aceite caen sobre todos.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'clock-to-coat#blast-to-coat-clock',
	breaks: { high: ['flash-rust', 'flaking'] },
	outcome: { en: 'Rust or oxide under the film.', es: 'Óxido bajo la película.' },
	evidence: {
		en: 'Compare the time of blasting on the traveler with the time of the first coat.',
		es: 'Compare en la hoja de ruta la hora de granallado con la de la primera mano.'
	},
	field: 'blast-to-coat',
	applies: (seen) => blastClock(seen) !== undefined,
	expects(seen) {
		return { kind: 'at-most', max: blastClock(seen)!, amber: minutes(30) };
	}
} satisfies Rule;

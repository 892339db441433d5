import { workedOut } from '../../plan/trace';
import { wantedFilm } from '../../plan/wanted-film';
import { shopValue } from '../../shop/shop';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';
import { toBlast } from './blasting';

/** Silent under films thinner than the shop value: half of those is a depth blasting cannot keep. */
export default {
	id: 'profile-under-half-film',
	station: 'preparation',
	competency: 'preparation',
	skill: 'C7',
	title: {
		en: 'The profile stays under half of the thinnest film',
		es: 'El perfil queda debajo de la mitad de la película más delgada'
	},
	why: {
		en: 'Peaks higher than half the film stand close to the air where it is thinnest, and rust starts there. Limits for thick paint on steel are too deep here.',
		es: 'Los picos de más de media película casi asoman al aire donde esta es más delgada, y ahí empieza el óxido. Los límites para pintura gruesa sobre acero son demasiado profundos aquí.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'blast-settings#profile-under-half-film',
	breaks: { low: ['flaking'], high: ['pinpoint-rust', 'gloss-off'] },
	outcome: {
		en: 'Too deep: rust dots. Too shallow: no key, and the film flakes.',
		es: 'Muy profundo: motas de óxido. Muy poco: sin anclaje, la película se desprende.'
	},
	evidence: {
		en: 'Measure peak to valley with a stylus on the prepared metal; replica tape is a trend only at this depth.',
		es: 'Mida de pico a valle con palpador sobre el metal preparado; a esta profundidad la cinta réplica solo da tendencia.'
	},
	field: 'profile-limit',
	applies: (seen) => {
		const film = wantedFilm(seen);
		return (
			toBlast(seen) &&
			film !== undefined &&
			film.min.value >= shopValue(seen.shop, 'profile.thinnest-film').value
		);
	},
	expects(seen) {
		const film = wantedFilm(seen)!.min;
		const part = (id: 'profile.share-least' | 'profile.share-most') => {
			const share = shopValue(seen.shop, id);
			const label = { en: 'Part of the thinnest film', es: 'Parte de la película más delgada' };
			return workedOut('profile-under-half-film', 'length', film.value * share.value, label, { film, share });
		};
		const max = part('profile.share-most');
		return { kind: 'range', min: part('profile.share-least'), max, amber: max.value * 0.1 };
	}
} satisfies Rule;

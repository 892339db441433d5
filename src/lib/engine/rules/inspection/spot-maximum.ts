import { spotLimits } from '../../physics/readings/spot-limits';
import { wantedFilm } from '../../plan/wanted-film';
import { shopValue } from '../../shop/shop';
import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'spot-maximum',
	station: 'inspection',
	competency: 'inspection',
	skill: 'C12',
	title: { en: 'Highest spot that passes: 1.2 of the maximum', es: 'Sitio máximo que pasa: 1.2 del máximo' },
	why: {
		en: 'Above 1.2 of the maximum a film may crack, pop or keep the part from fitting. The rule was written for thicker films: on 10 to 40 µm the gauge itself is off by a few µm, so a spot near the limit is measured again.',
		es: 'Por encima de 1.2 del máximo la película puede agrietarse, hervir o impedir que la pieza encaje. La regla se escribió para películas más gruesas: entre 10 y 40 µm el propio medidor se desvía algunos µm, así que un sitio cerca del límite se mide otra vez.'
	},
	severity: 'quality',
	authority: 'tool',
	provenance: cite('sspc-pa-2', '§9, Table 1, default level 3', { read: 'stored text of 2012/2015' }),
	lesson: 'inspection#spot-maximum',
	breaks: { high: ['over-thick', 'over-cure'] },
	outcome: {
		en: 'A limit set too high lets parts out that will not fit or that crack; set too low, good parts are stripped.',
		es: 'Un límite muy alto deja salir piezas que no encajan o se agrietan; muy bajo, se decapan piezas buenas.'
	},
	evidence: {
		en: 'Average three readings in a 4 cm circle on the thickest place, and try the mating part or a thread gauge.',
		es: 'Promedie tres lecturas en un círculo de 4 cm en el lugar más grueso, y pruebe la pieza que encaja o un calibre de rosca.'
	},
	field: 'spot-maximum',
	applies: (seen) => wantedFilm(seen) !== undefined,
	expects(seen) {
		return {
			kind: 'computed',
			value: spotLimits.highest.of({ specified: wantedFilm(seen)!.max }),
			tolerance: shopValue(seen.shop, 'inspection.spot.rounding'),
			amber: 0
		};
	}
} satisfies Rule;

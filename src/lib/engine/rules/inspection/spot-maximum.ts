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
		en: 'Above 1.2 of the maximum films may crack, pop or not fit. A rule for thicker films: at 10 to 40 µm gauges err by a few µm; near the limit, measure again.',
		es: 'Sobre 1.2 del máximo la película puede agrietarse, hervir o no encajar. Regla de películas más gruesas: entre 10 y 40 µm el medidor se desvía algunos µm; cerca del límite, mida otra vez.'
	},
	severity: 'quality',
	authority: 'tool',
	provenance: cite('sspc-pa-2', '§9, Table 1, default level 3', { read: 'stored text of 2012/2015' }),
	lesson: 'film-thickness#spot-maximum',
	breaks: { high: ['over-thick', 'over-cure'] },
	outcome: {
		en: 'Too high: bad parts pass. Too low: good ones stripped.',
		es: 'Muy alto: salen piezas malas. Muy bajo: se decapan buenas.'
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

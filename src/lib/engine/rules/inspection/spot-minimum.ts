import { spotLimits } from '../../physics/readings/spot-limits';
import { wantedFilm } from '../../plan/wanted-film';
import { shopValue } from '../../shop/shop';
import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'spot-minimum',
	station: 'inspection',
	competency: 'inspection',
	skill: 'C12',
	title: { en: 'Lowest spot that passes: 0.8 of the minimum', es: 'Sitio mínimo que pasa: 0.8 del mínimo' },
	why: {
		en: 'Spots may fall to 0.8 of the minimum, their mean may not. A rule for thicker films: at 10 to 40 µm gauges err by a few µm; near the limit, measure again.',
		es: 'Un sitio puede bajar a 0.8 del mínimo; el promedio, no. Regla de películas más gruesas: entre 10 y 40 µm el medidor se desvía algunos µm; cerca del límite, mida otra vez.'
	},
	severity: 'quality',
	authority: 'tool',
	provenance: cite('sspc-pa-2', '§9, Table 1, default level 3', { read: 'stored text of 2012/2015' }),
	lesson: 'film-thickness#spot-minimum',
	breaks: { low: ['pinpoint-rust', 'print-through', 'thin-edges'] },
	outcome: {
		en: 'Too low: thin spots pass. Too high: good parts stripped.',
		es: 'Muy bajo: salen zonas delgadas. Muy alto: se decapan piezas buenas.'
	},
	evidence: {
		en: 'Average three readings in a 4 cm circle on the thinnest place and compare with the window on the ticket.',
		es: 'Promedie tres lecturas en un círculo de 4 cm en el lugar más delgado y compare con la ventana de la orden.'
	},
	field: 'spot-minimum',
	applies: (seen) => wantedFilm(seen) !== undefined,
	expects(seen) {
		return {
			kind: 'computed',
			value: spotLimits.lowest.of({ specified: wantedFilm(seen)!.min }),
			tolerance: shopValue(seen.shop, 'inspection.spot.rounding'),
			amber: 0
		};
	}
} satisfies Rule;

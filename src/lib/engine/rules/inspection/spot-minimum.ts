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
		en: 'One spot is the mean of three readings and may fall to 0.8 of the minimum while the mean of all spots stays inside the window. The rule was written for thicker films: on 10 to 40 µm the gauge itself is off by a few µm, so a spot near the limit is measured again.',
		es: 'Un sitio es el promedio de tres lecturas y puede bajar a 0.8 del mínimo mientras el promedio de todos quede en la ventana. La regla se escribió para películas más gruesas: entre 10 y 40 µm el propio medidor se desvía algunos µm, así que un sitio cerca del límite se mide otra vez.'
	},
	severity: 'quality',
	authority: 'tool',
	provenance: cite('sspc-pa-2', '§9, Table 1, default level 3', { read: 'stored text of 2012/2015' }),
	lesson: 'inspection#spot-minimum',
	breaks: { low: ['pinpoint-rust', 'print-through', 'thin-edges'] },
	outcome: {
		en: 'A limit set too low lets bare peaks and thin spots out of the shop; set too high, good parts are stripped.',
		es: 'Un límite muy bajo deja salir picos desnudos y zonas delgadas; muy alto, se decapan piezas buenas.'
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

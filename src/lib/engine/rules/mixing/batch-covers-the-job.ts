import { batchVolume } from '../../physics/film/batch-volume';
import { coatedArea } from '../../plan/coated-area';
import { middleFilm } from '../../plan/middle-film';
import { remembered } from '../../plan/remembered';
import { sheetValue, type Situation } from '../../plan/situation';
import { withReserve } from '../../plan/with-reserve';
import { shopValue } from '../../shop/shop';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

/** Unthinned coating for all parts at the middle of the wanted film; undefined where area, film or solids are not known. */
const needed = remembered((seen: Situation) => {
	const [area, dry, solids] = [coatedArea(seen.job), middleFilm(seen), sheetValue(seen, 'volume-solids')];
	return (
		area &&
		dry &&
		solids &&
		batchVolume.of({ area, dry, solids, transfer: shopValue(seen.shop, 'spray.transfer') })
	);
});

export default {
	id: 'batch-covers-the-job',
	station: 'mixing',
	competency: 'mixing',
	skill: 'C8',
	title: { en: 'Mix what the parts need and little more', es: 'Mezclar lo que piden las piezas y poco más' },
	why: {
		en: 'Running short means a second mix on the same face; mixing far too much ends as waste that heats up in the cup.',
		es: 'Si falta, hay que mezclar otra vez para la misma cara; si sobra mucho, acaba como residuo que se calienta en el vaso.'
	},
	severity: 'cost',
	authority: 'tool',
	provenance: commonPractice,
	lesson: 'measuring#batch-covers-the-job',
	breaks: { low: ['holiday', 'intercoat-peel'] },
	outcome: {
		en: 'Too little: a lap where the second mix starts. Too much: wasted coating and hazardous waste.',
		es: 'Muy poco: un empalme donde empieza la segunda mezcla. Demasiado: recubrimiento y residuo peligroso de más.'
	},
	evidence: {
		en: 'Work out area times film over solids and transfer, and compare with the mix log.',
		es: 'Calcule área por película entre sólidos y transferencia, y compare con el registro de mezcla.'
	},
	field: 'batch-volume',
	applies: (seen) => needed(seen) !== undefined,
	expects(seen) {
		const min = needed(seen)!;
		const max = withReserve(min, seen.shop);
		return { kind: 'range', min, max, amber: min.value * 0.1 };
	}
} satisfies Rule;

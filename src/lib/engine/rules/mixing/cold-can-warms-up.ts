import { sheetWindow, type Situation } from '../../plan/situation';
import { shopValue, shopWindow } from '../../shop/shop';
import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';
import hardenerSound from './hardener-sound';
import lotInDate from './lot-in-date';

/** A can counts as cold below the coolest air the sheet lets it be sprayed in: paint and air go on at one temperature. */
const coldestUse = (seen: Situation) =>
	(sheetWindow(seen, 'air-temperature') ?? shopWindow(seen.shop, 'spray.air')).min;

/** Only where the lot is not to be rejected anyway. */
export default {
	id: 'cold-can-warms-up',
	station: 'mixing',
	competency: 'mixing',
	skill: 'C8',
	title: { en: 'A cold can warms up before it is opened', es: 'Una lata fría se atempera antes de abrirla' },
	why: {
		en: 'Cold coating is thick, runs when it warms on the part, and draws water out of the air into the open can.',
		es: 'El recubrimiento frío está espeso, escurre al entibiarse en la pieza y atrae agua del aire a la lata abierta.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: cite(
		'ufc-3-190-06',
		'storage',
		{ read: 'store at 50 to 85 °F, 24 h warm-up if cold' },
		'handbook'
	),
	lesson: 'lot-and-can#cold-can-warms-up',
	breaks: { wrong: ['cold-run', 'runs', 'flaking'] },
	outcome: {
		en: 'Runs that appear late, or a film that peels.',
		es: 'Escurridos que aparecen tarde, o una película que se desprende.'
	},
	evidence: {
		en: 'Compare the store’s temperature log with the time the can was fetched.',
		es: 'Compare el registro de temperatura del almacén con la hora en que se sacó la lata.'
	},
	field: 'lot-action',
	applies(seen) {
		const { shelf } = seen.job;
		const cold = shelf.stored < coldestUse(seen).value;
		const standing = shelf.warming < shopValue(seen.shop, 'mix.warm-up').value;
		return cold && standing && !lotInDate.applies(seen) && !hardenerSound.applies(seen);
	},
	expects: () => ({ kind: 'one-of', options: ['warm'] })
} satisfies Rule;

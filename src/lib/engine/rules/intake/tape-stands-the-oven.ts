import { cureTemperature } from '../../plan/cure-window';
import type { Situation } from '../../plan/situation';
import { shopValue } from '../../shop/shop';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

const TAPES = ['paper', 'polyester', 'polyimide'] as const;

/** Tapes rated for the hottest part temperature of the cure; none where there is no oven cure or it is too hot for tape. */
function standing(seen: Situation) {
	const hottest = cureTemperature(seen)?.max.value;
	if (hottest === undefined) return [];
	return TAPES.filter((tape) => shopValue(seen.shop, `tape.${tape}`).value >= hottest);
}

export default {
	id: 'tape-stands-the-oven',
	station: 'intake',
	competency: 'intake',
	skill: 'C6',
	title: { en: 'Tape that stands the cure', es: 'Una cinta que aguante el curado' },
	why: {
		en: 'Past its rating the glue of a tape runs and bakes on: the edge bleeds and the residue stays in the seat.',
		es: 'Pasada su resistencia, el pegamento de la cinta escurre y se hornea: el borde se filtra y el residuo queda en el asiento.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'masking#tape-stands-the-oven',
	breaks: { wrong: ['mask-bleed', 'mask-ridge'] },
	outcome: { en: 'Ragged mask line, baked-on glue.', es: 'Línea de máscara irregular, pegamento horneado.' },
	evidence: {
		en: 'Read the roll’s rating and compare it with the hottest part temperature of the cure.',
		es: 'Lea la resistencia del rollo y compárela con la temperatura más alta de la pieza en el curado.'
	},
	field: 'mask-tape',
	// a cure that every tape stands leaves nothing to choose
	applies(seen) {
		const left = standing(seen).length;
		return seen.job.parts.some(({ features }) => features.length > 0) && left > 0 && left < TAPES.length;
	},
	expects(seen) {
		return { kind: 'one-of', options: standing(seen) };
	}
} satisfies Rule;

import { cite } from '../../sources/provenance';
import { micrometres } from '../../units/construct';
import type { Fraction, Metre } from '../../units/dimension';
import { explained } from '../explained';
import { defineProcedure } from '../procedure';
import { sampleMean } from './sample-mean';

type Given = { readings: readonly Metre[]; nominal: Metre; most: Metre };

export type EightyTwenty = {
	readonly mean: Metre;
	/** Of all readings, those below the nominal film. */
	readonly thinShare: Fraction;
	readonly meanReached: boolean;
	/** No reading below 0.8 of the nominal film. */
	readonly noneTooThin: boolean;
	readonly fewThin: boolean;
	readonly noneTooThick: boolean;
	readonly accepted: boolean;
};

const THINNEST = micrometres(40);
const LOWEST_SHARE = 0.8;
const THIN_SHARE = 0.2;
/** Far finer than any gauge: takes up rounding in the last bits of a reading at its limit. */
const SLACK = 1e-12;
const SCOPE =
	'ISO 19840 leaves out nominal films below 40 µm; on a thinner film its rule is an analogy and no acceptance';

const enough = (share: number, inclusive: boolean) =>
	share < THIN_SHARE || (inclusive && share === THIN_SHARE);

function procedure(id: string, sign: '<' | '≤') {
	const rule = defineProcedure<Given, EightyTwenty>({
		id,
		title: { en: `Film by the 80–20 rule (${sign} 20 %)`, es: `Película por la regla 80–20 (${sign} 20 %)` },
		equation: `mean ≥ NDFT; each ≥ 0.8 · NDFT; share below NDFT ${sign} 20 %; each ≤ stated maximum`,
		source: cite('iso-19840', 'acceptance criteria', {
			read: 'scope, and the criteria as quoted in trade and association texts'
		}),
		inputs: { readings: 'length', nominal: 'length', most: 'length' },
		validFor: { readings: [0, 0.02], nominal: [THINNEST, 5e-3], most: [THINNEST, 0.02] },
		compute({ readings, nominal, most }) {
			if (nominal > most)
				throw new RangeError(`${id}: nominal = ${nominal} must not be above most = ${most} (SI)`);
			const mean = sampleMean.at({ values: readings }) as Metre;
			const thin = readings.filter((one) => one < nominal - SLACK).length;
			const thinShare = (thin / readings.length) as Fraction;
			const meanReached = mean >= nominal - SLACK;
			const noneTooThin = readings.every((one) => one >= LOWEST_SHARE * nominal - SLACK);
			const fewThin = enough(thinShare, sign === '≤');
			const noneTooThick = readings.every((one) => one <= most + SLACK);
			const accepted = meanReached && noneTooThin && fewThin && noneTooThick;
			return { mean, thinShare, meanReached, noneTooThin, fewThin, noneTooThick, accepted };
		}
	});
	return {
		...rule,
		at(values: Given) {
			try {
				return rule.at(values);
			} catch (refusal) {
				throw values.nominal < THINNEST ? explained(refusal, SCOPE) : refusal;
			}
		}
	};
}

/**
 * Acceptance of readings by the 80–20 rule of ISO 19840, written for blast-cleaned steel and nominal films of 40 µm or more;
 * below that it refuses and says why. Readings in metres, corrected for the profile already. `most` is the stated maximum,
 * often three times the nominal film. Editions and contracts differ on a share of exactly one fifth, so there are two: the
 * stricter wants fewer than 20 %, the other allows 20 %.
 */
export const filmEightyTwenty = {
	fewer: procedure('film-80-20', '<'),
	upTo: procedure('film-80-20-inclusive', '≤')
};

import { cite, type Provenance } from '../../sources/provenance';
import { defineFormula } from '../formula';

const LAW = cite('osha-1910-95', 'Appendix B', { read: 'a state twin and answers that quote the appendix' });
const GUIDANCE = cite('osha-technical-manual', 'section III, ch. 5, field attenuation', {
	read: 'the halving as quoted on public pages'
});
const ADVICE = cite('niosh-98-126', '§6, derating by type of protector', {
	read: 'factors as quoted on public pages'
});

/** What an A-weighted reading may miss of low notes, dB. */
const SPECTRUM = 7;
const LEVEL: [number, number] = [60, 140];
const TITLE = { en: 'Noise under the hearing protector', es: 'Ruido bajo el protector auditivo' };

const fromA = (id: string, equation: string, source: Provenance, kept: number) =>
	defineFormula({
		id: `protected-level-${id}`,
		title: TITLE,
		equation,
		source,
		inputs: { level: 'sound-level', rating: 'count' },
		gives: 'sound-level',
		validFor: { level: LEVEL, rating: [SPECTRUM, 40] },
		compute: ({ level, rating }) => level - kept * (rating - SPECTRUM)
	});

const fromC = (id: string, equation: string, source: Provenance, kept: number) =>
	defineFormula({
		id: `protected-level-${id}`,
		title: TITLE,
		equation,
		source,
		inputs: { level: 'sound-level-c', rating: 'count' },
		gives: 'sound-level',
		validFor: { level: LEVEL, rating: [0, 40] },
		compute: ({ level, rating }) => level - kept * rating
	});

/** Share of the printed rating that people keep at work, by kind of protector (NIOSH). */
export const RATING_KEPT = { muff: 0.75, 'formable-plug': 0.5, 'other-plug': 0.3 } as const;
const KEPT: [number, number] = [RATING_KEPT['other-plug'], RATING_KEPT.muff];

/**
 * A-weighted level at the ear from the noise reduction rating (NRR) printed on the pack. From an A-weighted level 7 dB
 * are taken off the rating first; from a C-weighted one none. The appendix of the law stops there; people at work get
 * less, so the guidance for inspectors halves what is left, and NIOSH keeps a share by kind of protector. Below 85 dB(A)
 * is wanted, and never on paper only: the protector must fit and be worn all the time.
 */
export const hearingProtector = {
	a: fromA('a', 'L(ear) = L(A) − (NRR − 7)', LAW, 1),
	c: fromC('c', 'L(ear) = L(C) − NRR', LAW, 1),
	aHalved: fromA('a-halved', 'L(ear) = L(A) − (NRR − 7)/2', GUIDANCE, 0.5),
	cHalved: fromC('c-halved', 'L(ear) = L(C) − NRR/2', GUIDANCE, 0.5),
	aByKind: defineFormula({
		id: 'protected-level-a-by-kind',
		title: TITLE,
		equation: 'L(ear) = L(A) − (kept · NRR − 7), never above L(A)',
		source: ADVICE,
		inputs: { level: 'sound-level', rating: 'count', kept: 'fraction' },
		gives: 'sound-level',
		validFor: { level: LEVEL, rating: [0, 40], kept: KEPT },
		compute: ({ level, rating, kept }) => level - Math.max(0, kept * rating - SPECTRUM)
	}),
	cByKind: defineFormula({
		id: 'protected-level-c-by-kind',
		title: TITLE,
		equation: 'L(ear) = L(C) − kept · NRR',
		source: ADVICE,
		inputs: { level: 'sound-level-c', rating: 'count', kept: 'fraction' },
		gives: 'sound-level',
		validFor: { level: LEVEL, rating: [0, 40], kept: KEPT },
		compute: ({ level, rating, kept }) => level - kept * rating
	})
};

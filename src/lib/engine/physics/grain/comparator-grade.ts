import { cite } from '../../sources/provenance';
import { micrometres } from '../../units/construct';
import type { Metre } from '../../units/dimension';
import { defineProcedure } from '../procedure';

export type ProfileGrade = 'finer-than-fine' | 'fine' | 'medium' | 'coarse' | 'coarser-than-coarse';

/** Nominal profiles of the four segments, fine to coarse. */
type Segments = readonly [Metre, Metre, Metre, Metre];
const segments = (...micro: readonly [number, number, number, number]) =>
	micro.map(micrometres) as unknown as Segments;

const comparator = (id: 'grit' | 'shot', [en, es]: readonly [string, string], of: Segments) => ({
	segments: of,
	grade: defineProcedure<{ readonly profile: Metre }, ProfileGrade>({
		id: `comparator-grade-${id}`,
		title: { en: `Profile grade after blasting with ${en}`, es: `Grado de perfil tras granallar con ${es}` },
		equation: '1 ≤ fine < 2 ≤ medium < 3 ≤ coarse < 4 (segments)',
		source: cite('iso-8503', 'segments of part 1, grading of part 2', {
			read: 'data sheet and instructions of a comparator'
		}),
		inputs: { profile: 'length' },
		validFor: { profile: [0, 500e-6] },
		compute({ profile }) {
			const [fine, medium, coarse, beyond] = of;
			if (profile < fine) return 'finer-than-fine';
			if (profile < medium) return 'fine';
			if (profile < coarse) return 'medium';
			return profile < beyond ? 'coarse' : 'coarser-than-coarse';
		}
	})
});

/**
 * Grade of a blasted steel profile against the ISO comparator plates: from one segment up to, not including, the next.
 * Even the finest segment is coarser than a thin film can take, so finer than fine is the usual and right answer here.
 */
export const comparators = {
	/** Angular profile: grit. */
	grit: comparator('grit', ['grit', 'abrasivo angular'], segments(25, 60, 100, 150)),
	/** Dimpled profile: shot and bead. */
	shot: comparator('shot', ['shot', 'granalla esférica'], segments(25, 40, 70, 100))
};

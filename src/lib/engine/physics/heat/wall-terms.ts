import { cite } from '../../sources/provenance';
import type { Fraction } from '../../units/dimension';
import { defineProcedure } from '../procedure';
import { wallTerm, type WallTerm } from './wall-series';

const SHOWN = 5;

/** The first five terms of the series for a plane wall: ζ in radians and C. The first alone holds from Fo = 0.2. */
export const wallTerms = defineProcedure<{ biot: Fraction }, readonly WallTerm[]>({
	id: 'wall-terms',
	title: { en: 'Terms of the wall series', es: 'Términos de la serie de la pared' },
	equation: 'ζ · tan ζ = Bi, C = 4 · sin ζ/(2ζ + sin 2ζ)',
	source: cite('incropera-heat', 'eqs. 5.39b and c, Table 5.1', {
		read: 'Table 5.1 as quoted in an open-source test suite'
	}),
	inputs: { biot: 'fraction' },
	validFor: { biot: [1e-6, 10_000] },
	compute: ({ biot }) => Array.from({ length: SHOWN }, (_, index) => wallTerm(biot, index))
});

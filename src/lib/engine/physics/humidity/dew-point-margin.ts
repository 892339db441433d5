import { arithmetic } from '../../sources/provenance';
import { celsius } from '../../units/construct';
import { defineFormula } from '../formula';

/** How far a surface is above the dew point of the air around it; zero and below, water stands on it. */
export const dewPointMargin = defineFormula({
	id: 'dew-point-margin',
	title: { en: 'Surface above the dew point', es: 'Superficie sobre el punto de rocío' },
	equation: 'Δ = T(surface) − Td',
	source: arithmetic('a difference of two temperatures'),
	inputs: { surface: 'temperature', dew: 'temperature' },
	gives: 'temperature-difference',
	validFor: { surface: [celsius(-45), celsius(300)], dew: [celsius(-80), celsius(60)] },
	compute: ({ surface, dew }) => surface - dew
});

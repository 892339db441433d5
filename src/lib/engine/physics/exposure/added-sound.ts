import { arithmetic } from '../../sources/provenance';
import type { SoundLevel } from '../../units/dimension';
import { defineProcedure } from '../procedure';

/** Level of several sources heard together at one place: their intensities add, so two alike make 3 dB more than one. */
export const addedSound = defineProcedure<{ readonly levels: readonly SoundLevel[] }, SoundLevel>({
	id: 'added-sound',
	title: { en: 'Noise of several sources together', es: 'Ruido de varias fuentes juntas' },
	equation: 'L = 10 · log₁₀(10^(L₁/10) + 10^(L₂/10) + …)',
	source: arithmetic('intensities of unrelated sources add'),
	inputs: { levels: 'sound-level' },
	validFor: { levels: [0, 150] },
	compute: ({ levels }) =>
		(10 * Math.log10(levels.reduce((sum, level) => sum + 10 ** (level / 10), 0))) as SoundLevel
});

import { cite, type Provenance } from '../../sources/provenance';
import type { Fraction, Second, SoundLevel } from '../../units/dimension';
import { defineFormula } from '../formula';
import { refuseUnpaired } from '../paired';
import { defineProcedure } from '../procedure';

type Criterion = {
	readonly id: string;
	readonly limit: number;
	readonly exchange: number;
	readonly source: Provenance;
};

const OSHA: Criterion = {
	id: 'osha',
	limit: 90,
	exchange: 5,
	source: cite('osha-1910-95', 'Appendix A, Table G-16a', { read: 'Appendix A' })
};
const NIOSH: Criterion = {
	id: 'niosh',
	limit: 85,
	exchange: 3,
	source: cite('niosh-98-126', '§1.1', { read: 'formula as quoted and the table of a NIOSH topic page' })
};
const SHIFT = 28_800;
/** Quieter periods are left out of a dose; louder ones are beyond what any dose permits. */
const LEVELS: [number, number] = [80, 130];

function scheme({ id, limit, exchange, source }: Criterion) {
	const duration = defineFormula({
		id: `noise-duration-${id}`,
		title: { en: 'Longest time at this noise', es: 'Tiempo máximo con este ruido' },
		equation: `T = 8 h/2^((L − ${limit})/${exchange})`,
		source,
		inputs: { level: 'sound-level' },
		gives: 'duration',
		validFor: { level: LEVELS },
		compute: ({ level }) => SHIFT / 2 ** ((level - limit) / exchange)
	});
	const average = defineFormula({
		id: `noise-average-${id}`,
		title: { en: 'Eight-hour average level', es: 'Nivel promedio de ocho horas' },
		equation: `L(8 h) = ${limit} + ${exchange} · log₂(dose)`,
		source,
		inputs: { dose: 'fraction' },
		gives: 'sound-level',
		validFor: { dose: [0.001, 1000] },
		compute: ({ dose }) => limit + exchange * Math.log2(dose)
	});
	const dose = defineProcedure<
		{ readonly levels: readonly SoundLevel[]; readonly durations: readonly Second[] },
		Fraction
	>({
		id: `noise-dose-${id}`,
		title: { en: 'Noise dose of the shift', es: 'Dosis de ruido del turno' },
		equation: 'D = C₁/T₁ + C₂/T₂ + …',
		source,
		inputs: { levels: 'sound-level', durations: 'duration' },
		validFor: { levels: LEVELS, durations: [0, 86_400] },
		compute({ levels, durations }) {
			refuseUnpaired(`noise-dose-${id}`, { levels, durations });
			return levels.reduce(
				(sum, level, period) => sum + durations[period]! / duration.at({ level }),
				0
			) as Fraction;
		}
	});
	return { duration, average, dose };
}

/**
 * The two American ways to count noise: the law halves the time per 5 dB from 90, the health advice per 3 dB from 85. A
 * dose is the share of a day's permitted exposure; 1 is the limit. The law asks for hearing conservation at a dose of one
 * half, counted from 80 dB(A); for its permitted exposure only the periods of 90 dB(A) and more count.
 */
export const noiseExposure = { osha: scheme(OSHA), niosh: scheme(NIOSH) };

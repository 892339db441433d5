import { cite, type Provenance } from '../sources/provenance';
import type { Second, SoundLevel } from '../units/dimension';
import { defineFormula } from './formula';

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

function scheme({ id, limit, exchange, source }: Criterion) {
	const duration = defineFormula({
		id: `noise-duration-${id}`,
		title: { en: 'Longest time at this noise', es: 'Tiempo máximo con este ruido' },
		equation: `T = 8 h/2^((L − ${limit})/${exchange})`,
		source,
		inputs: { level: 'sound-level' },
		gives: 'duration',
		validFor: { level: [80, 130] },
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
	/** Share of a day's permitted exposure; 1 is the limit. Levels from 80 to 130 dB(A). */
	const dose = (periods: readonly { readonly level: SoundLevel; readonly duration: Second }[]) =>
		periods.reduce((sum, { level, duration: spent }) => sum + spent / duration.at({ level }), 0);
	return { duration, average, dose };
}

/** The two American ways to count noise: the law halves the time per 5 dB from 90, the health advice per 3 dB from 85. */
export const noiseExposure = { osha: scheme(OSHA), niosh: scheme(NIOSH) };

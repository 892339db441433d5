import { sampleMean, SI_UNITS, spotLimits, type Dimension, type Metre, type Text } from '$lib/engine';
import type { CompetencyId } from './competency';
import { practicalGates, type PracticalGate } from './practical-gates';
import { exact, type Bench, type PracticalLimit } from './practical-limits';
import { practicalReadings, type PracticalReading } from './practical-readings';

export type PracticalPlan = {
	readonly gates: readonly (Pick<PracticalGate, 'id' | 'label' | 'provenance'> & {
		readonly critical: boolean;
	})[];
	readonly readings: readonly (PracticalReading & { readonly held: PracticalLimit })[];
};

/** What is watched and measured in one competency with one coating. A reading without any limit is not asked for. */
export const practicalPlan = (competency: CompetencyId, bench: Bench): PracticalPlan => ({
	gates: practicalGates[competency].map(({ id, label, provenance, critical }) => ({
		id,
		label,
		provenance,
		critical:
			critical === 'always' || (critical === 'with-isocyanate' && bench.sheet.hazards.includes('isocyanate'))
	})),
	readings: practicalReadings[competency].flatMap((reading) => {
		const held = reading.limit(bench);
		return held ? [{ ...reading, held }] : [];
	})
});

/** One line of the record: raw or averaged values in SI and what they were held against. */
export type PracticalEntry = {
	readonly reading: string;
	readonly unit: string;
	readonly values: readonly number[];
	readonly least: number | null;
	readonly most: number | null;
};

type Asked = PracticalPlan['readings'][number];

/** The readings of a film as taken, the means of its spots and their mean, each held against its own limits. */
function filmEntries({ held, dimension }: Asked, spots: readonly (readonly number[])[]): PracticalEntry[] {
	const unit = SI_UNITS[dimension];
	const means = spots.map((spot) => exact(sampleMean.at({ values: spot })));
	const { least, most } = held;
	return [
		{ reading: 'film-raw', unit, values: spots.flat(), least: null, most: null },
		{
			reading: 'film-spots',
			unit,
			values: means,
			least: least === null ? null : exact(spotLimits.lowest.at({ specified: least as Metre })),
			most: most === null ? null : exact(spotLimits.highest.at({ specified: most as Metre }))
		},
		{ reading: 'film-mean', unit, values: [exact(sampleMean.at({ values: means }))], least, most }
	];
}

/**
 * What goes into the record for one reading.
 * @param places values in SI, a list for each place where some were taken
 */
export function practicalEntries(
	asked: Asked,
	places: readonly (readonly number[])[]
): readonly PracticalEntry[] {
	const taken = places.map((values) => values.map(exact)).filter((values) => values.length > 0);
	if (taken.length === 0) return [];
	if (asked.judged === 'film') return filmEntries(asked, taken);
	const { id, dimension, held } = asked;
	const { least, most } = held;
	return [{ reading: id, unit: SI_UNITS[dimension], values: taken.flat(), least, most }];
}

type Named = { readonly label: Text; readonly dimension: Dimension };

const ofFilm = (en: string, es: string): Named => ({ label: { en, es }, dimension: 'length' });

const named = new Map<string, Named>([
	...Object.values(practicalReadings)
		.flat()
		.map(({ id, label, dimension }): [string, Named] => [id, { label, dimension }]),
	['film-raw', ofFilm('Dry film, single readings', 'Película seca, lecturas sueltas')],
	['film-spots', ofFilm('Dry film, mean of each spot', 'Película seca, promedio de cada sitio')],
	['film-mean', ofFilm('Dry film, mean of the spots', 'Película seca, promedio de los sitios')]
]);

/** What a recorded reading is; undefined for one of another version of the practical. */
export const practicalReadingNamed = (id: string): Named | undefined => named.get(id);

const gates = new Map(
	Object.values(practicalGates).flatMap((each) => each.map((gate) => [gate.id, gate.label]))
);

/** What a recorded gate is; undefined for one of another version of the practical. */
export const practicalGateNamed = (id: string): Text | undefined => gates.get(id);

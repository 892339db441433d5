import { cite, type Provenance } from '../../sources/provenance';
import { micrometres } from '../../units/construct';
import type { Count, Metre } from '../../units/dimension';
import { FEPA_F, FEPA_P, ANSI_COATED, type GritRow } from './grit-tables';
import { defineProcedure } from '../procedure';

/** Mean size of the grain, and where that very number was read. */
export type Grit = { readonly size: Metre; readonly provenance: Provenance };

const family = (
	id: string,
	[en, es]: readonly [string, string],
	source: Provenance,
	rows: readonly GritRow[]
) => {
	const known = rows.map(([number]) => number);
	return defineProcedure<{ readonly number: Count }, Grit>({
		id: `grit-size-${id}`,
		title: { en: `Grain size, ${en}`, es: `Tamaño de grano, ${es}` },
		equation: 'table by number, in this family only',
		source,
		inputs: { number: 'count' },
		validFor: { number: [Math.min(...known), Math.max(...known)] },
		compute({ number }) {
			const row = rows.find(([one]) => one === number);
			if (!row)
				throw new RangeError(
					`grit-size-${id}: no number ${number} in this family; allowed are ${known.join(', ')}`
				);
			return { size: micrometres(row[1]), provenance: { ...source, verification: row[2] } };
		}
	});
};

/**
 * Mean grain size by number, each family for itself. The same number is another grain in another family (100 is 162 µm
 * on P paper, 129 µm as loose grain and 141 µm on paper of the US scale), so nothing here converts between them, and a
 * number without its family is not a size. Throws for an unknown number, naming what is known.
 */
export const gritSize = {
	/** Coated abrasive with a P before the number. */
	'fepa-p': family('fepa-p', ['P paper', 'lija con P'], cite('iso-6344', 'mean grain sizes'), FEPA_P),
	/** Loose and bonded macrogrits: blasting media. */
	'fepa-f': family(
		'fepa-f',
		['loose grain F', 'grano suelto F'],
		cite('iso-8486-1', 'mean grain sizes, shared with ANSI B74.12'),
		FEPA_F
	),
	/** Coated abrasive of the US scale, a bare number. */
	'ansi-b74-18': family(
		'ansi-b74-18',
		['US paper without P', 'lija de EE. UU. sin P'],
		cite('ansi-b74-18', 'average grain sizes'),
		ANSI_COATED
	)
};

import { SI_UNITS, type Dimension } from './dimension';
import { spellingKey } from './spelling';
import type { Unit } from './unit';
import { UNITS } from './units';

const DIMENSIONS = Object.keys(SI_UNITS) as Dimension[];

const spellingsOf = (unit: Unit) =>
	[unit.id, unit.label.en, unit.label.es, ...unit.spellings].map(spellingKey);

const BY_SPELLING = new Map<string, Unit>();
for (const unit of Object.values(UNITS).flat())
	for (const key of spellingsOf(unit)) {
		const entry = `${unit.dimension} ${key}`;
		const known = BY_SPELLING.get(entry);
		if (known && known !== unit)
			throw new Error(`'${key}' means ${known.id} and ${unit.id} in ${unit.dimension}`);
		BY_SPELLING.set(entry, unit);
	}

/** Fluid and weight ounces, and measures that are larger in one country than in the other. */
const AMBIGUOUS: readonly {
	keys: readonly string[];
	code: 'ambiguous-ounce' | 'ambiguous-unit';
	choices: readonly string[];
}[] = [
	{
		keys: ['oz', 'ozs', 'ounce', 'ounces', 'onza', 'onzas'],
		code: 'ambiguous-ounce',
		choices: ['US fl oz', 'imp fl oz', 'oz (weight)']
	},
	{
		keys: ['floz', 'fluidoz', 'fluidounce', 'fluidounces', 'ozliq', 'onzaliquida', 'onzasliquidas'],
		code: 'ambiguous-ounce',
		choices: ['US fl oz', 'imp fl oz']
	},
	{
		keys: ['pt', 'pts', 'pint', 'pints', 'pinta', 'pintas'],
		code: 'ambiguous-unit',
		choices: ['US pt', 'imp pt']
	},
	{
		keys: ['qt', 'qts', 'quart', 'quarts', 'cuarto', 'cuartos'],
		code: 'ambiguous-unit',
		choices: ['US qt', 'imp qt']
	},
	{
		keys: ['gal', 'gals', 'gallon', 'gallons', 'galon', 'galones'],
		code: 'ambiguous-unit',
		choices: ['US gal', 'imp gal']
	}
];

/** The unit people mean by this spelling when this dimension is asked for. */
export const unitNamed = (dimension: Dimension, spelling: string): Unit | undefined =>
	BY_SPELLING.get(`${dimension} ${spellingKey(spelling)}`);

/** Another dimension that knows this spelling: `psi` where a length was asked for. */
export const dimensionNamed = (spelling: string): Dimension | undefined =>
	DIMENSIONS.find((dimension) => unitNamed(dimension, spelling));

export const ambiguityOf = (spelling: string) => {
	const key = spellingKey(spelling);
	return AMBIGUOUS.find((one) => one.keys.includes(key));
};

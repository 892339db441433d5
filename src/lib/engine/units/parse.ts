import type { Text } from '../text';
import type { Dimension, Si } from './dimension';
import type { QuantityProblem } from './problem';
import { readClock, readCompound } from './read-compound';
import { NUMBER, plainTyping, readNumber } from './read-number';
import { readRatio } from './read-ratio';
import { readUnit } from './read-unit';
import type { Reading, ReadingContext } from './reading';
import { unitOf } from './units';

export type ParsedQuantity<D extends Dimension = Dimension> =
	| { readonly ok: true; readonly value: Si<D>; readonly unit: string }
	| { readonly ok: false; readonly problem: QuantityProblem };

export type ParseOptions = {
	/** Language of the page: settles whether a point may part thousands. English if left out. */
	readonly lang?: keyof Text;
	/** Unit id the field prints beside its box, taken where none is typed. Without it a unit must be typed. */
	readonly fallbackUnit?: string;
};

/** Longer than any quantity a person writes. */
const LONGEST = 60;
/** Larger in SI than anything in a shop; a slipped key, not a quantity. */
const LARGEST = 1e9;
const ONE = new RegExp(`^(${NUMBER})(.*)$`);

/**
 * Reads a quantity as people type it: `85 psi`, `5,9 bar`, `300°F`, `0.8 mil`, `1/2 in`, `9:1`, `1 h 15 min`.
 * Gives SI of `dimension`. Refuses, as data, whatever could be meant in two ways. Temperatures (points and
 * differences) and angles may be negative; nothing else may.
 */
export function parseQuantity<D extends Dimension>(
	typed: string,
	dimension: D,
	{ lang = 'en', fallbackUnit }: ParseOptions = {}
): ParsedQuantity<D> {
	const context: ReadingContext = {
		dimension,
		lang,
		fallbackUnit: fallbackUnit === undefined ? undefined : unitOf(dimension, fallbackUnit)
	};
	const reading = check(read(plainTyping(typed.slice(0, LONGEST + 1)), context), dimension);
	return 'code' in reading
		? { ok: false, problem: { ...reading, typed: typed.slice(0, LONGEST), dimension } }
		: { ok: true, value: reading.value as Si<D>, unit: reading.unit.id };
}

function read(text: string, context: ReadingContext): Reading {
	if (!text) return { code: 'empty' };
	if (text.length > LONGEST) return { code: 'not-a-number' };
	if (context.dimension === 'ratio') return readRatio(text, context);
	const special =
		context.dimension === 'duration'
			? (readClock(text, context) ?? readCompound(text, context))
			: context.dimension === 'length'
				? readCompound(text, context)
				: undefined;
	return special ?? readOne(text, context);
}

function readOne(text: string, context: ReadingContext): Reading {
	const [, number, rest = ''] = ONE.exec(text) ?? [];
	if (number === undefined) return { code: 'not-a-number' };
	const amount = readNumber(number, context.lang);
	if (typeof amount !== 'number') return { code: amount };
	const unit = context.dimension === 'count' && !rest.trim() ? unitOf('count', '') : readUnit(rest, context);
	return 'code' in unit ? unit : { value: unit.toSi(amount), unit };
}

const MAY_BE_NEGATIVE: readonly Dimension[] = ['temperature-difference', 'angle'];

function check(reading: Reading, dimension: Dimension): Reading {
	if ('code' in reading) return reading;
	const { value } = reading;
	if (!(Math.abs(value) <= LARGEST)) return { code: 'too-large' };
	if (value < 0 && dimension === 'temperature') return { code: 'below-absolute-zero' };
	if (value < 0 && !MAY_BE_NEGATIVE.includes(dimension)) return { code: 'negative' };
	if (dimension === 'count' && !Number.isInteger(value)) return { code: 'not-whole' };
	return reading;
}

import type { Random } from '../../src/lib/drills/random';

/** As much of a valibot schema as the job's is made of. */
export type Schema = {
	readonly type: string;
	readonly pipe?: readonly Step[];
	readonly entries?: Readonly<Record<string, Schema>>;
	readonly item?: Schema;
	readonly wrapped?: Schema;
	readonly options?: readonly unknown[];
	readonly literal?: unknown;
};
type Step = { readonly type: string; readonly requirement?: unknown };

/** Most items of a list that the schema leaves open. */
const LONGEST = 6;
const STEPS = 1_000_000;
/** Every so many numbers is one of its own bounds: that is where comparisons go wrong. */
const BOUND = 12;
const DAYS = [
	'2025-12-31',
	'2026-01-01',
	'2026-06-30',
	'2026-11-24',
	'2026-11-25',
	'2026-11-26',
	'2029-02-28'
];

const bound = ({ pipe = [] }: Schema, type: string): number | undefined => {
	const step = pipe.find((one) => one.type === type);
	return typeof step?.requirement === 'number' ? step.requirement : undefined;
};

export function numberBetween(low: number, high: number, random: Random): number {
	if (random.onceIn(BOUND)) return random.pick([low, high]);
	return low + (high - low) * (random.integer(0, STEPS) / STEPS);
}

function drawNumber(schema: Schema, random: Random): number {
	const [low, high] = [bound(schema, 'min_value'), bound(schema, 'max_value')];
	if (low === undefined || high === undefined) throw new Error('draw: a number without bounds');
	const whole = schema.pipe?.some(({ type }) => type === 'integer');
	return whole ? random.integer(low, high) : numberBetween(low, high, random);
}

function drawList(schema: Schema, random: Random): unknown[] {
	const item = schema.item!;
	if (item.type === 'picklist') return random.some(item.options!, random.integer(0, item.options!.length));
	const low = bound(schema, 'min_length') ?? 0;
	const length = random.integer(low, bound(schema, 'max_length') ?? LONGEST);
	return Array.from({ length }, () => draw(item, random));
}

/** Any value that the schema admits, bounds and empty lists included. Throws for a kind of schema it does not know. */
export function draw(schema: Schema, random: Random): unknown {
	switch (schema.type) {
		case 'object':
			return Object.fromEntries(
				Object.entries(schema.entries!).map(([key, entry]) => [key, draw(entry, random)])
			);
		case 'array':
			return drawList(schema, random);
		case 'nullable':
			return random.onceIn(2) ? null : draw(schema.wrapped!, random);
		case 'optional':
			return random.onceIn(2) ? undefined : draw(schema.wrapped!, random);
		case 'picklist':
			return random.pick(schema.options!);
		case 'union':
			return draw(random.pick(schema.options! as readonly Schema[]), random);
		case 'literal':
			return schema.literal;
		case 'boolean':
			return random.onceIn(2);
		case 'number':
			return drawNumber(schema, random);
		case 'string':
			return schema.pipe?.some(({ type }) => type === 'iso_date') ? random.pick(DAYS) : 'drawn';
		default:
			throw new Error(`draw: nothing is known of a ${schema.type}`);
	}
}

/** A value like the one given, in which once in `rarely` an entry is drawn anew. */
export function redraw(schema: Schema, value: unknown, rarely: number, random: Random): unknown {
	if (schema.type === 'object' && typeof value === 'object' && value !== null) {
		const given = value as Readonly<Record<string, unknown>>;
		return Object.fromEntries(
			Object.entries(schema.entries!).map(([key, entry]) => [key, redraw(entry, given[key], rarely, random)])
		);
	}
	if (schema.type === 'array' && schema.item!.type === 'object' && !random.onceIn(rarely))
		return (value as readonly unknown[]).map((one) => redraw(schema.item!, one, rarely, random));
	return random.onceIn(rarely) ? draw(schema, random) : value;
}

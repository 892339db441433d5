import { SOURCES } from '../sources/sources';
import { UNITS } from '../units/units';
import { LINE_BOUNDS } from './bounds';
import { SHEET_FORMAT } from './format-tag';
import { REQUIRED_LINES, SHEET_LINES, type LineId } from './lines';
import { CUPS, FAMILIES, HAZARDS, THINNERS } from './traits';

const text = { type: 'string', minLength: 1, maxLength: 120 };
const oneOf = (table: object) => ({ enum: Object.keys(table) });
const oneOfOrNull = (table: object) => ({ enum: [...Object.keys(table), null] });
const closed = (properties: Record<string, unknown>, required = Object.keys(properties)) => ({
	type: 'object',
	additionalProperties: false,
	required,
	properties
});

function line(id: LineId) {
	const { label, dimension, shape } = SHEET_LINES[id];
	const amount = { type: dimension === 'count' ? 'integer' : 'number' };
	const [low, high] = LINE_BOUNDS[id].map((bound) => UNITS[dimension][0]!.fromSi(bound).toPrecision(4));
	return {
		title: `${label.en} / ${label.es}`,
		description: `In the unit named beside it; between ${low} and ${high} ${UNITS[dimension][0]!.id}`.trim(),
		type: 'array',
		minItems: 1,
		items: closed({
			from: { type: 'string', format: 'date' },
			unit: { enum: UNITS[dimension].map((unit) => unit.id) },
			provenance: { $ref: '#/$defs/provenance' },
			...(shape === 'value' ? { value: amount } : { min: amount, max: amount })
		})
	};
}

const lineIds = Object.keys(SHEET_LINES) as LineId[];

/**
 * The layout of a data-sheet file as a JSON Schema document, made from the same tables that the checks use. It describes
 * shape only; how the numbers have to agree with each other is `validateSheet`'s to say.
 */
export const sheetJsonSchema = () => ({
	$schema: 'https://json-schema.org/draft/2020-12/schema',
	title: SHEET_FORMAT,
	...closed({
		format: { const: SHEET_FORMAT },
		id: { type: 'string', pattern: '^[a-z0-9]+(-[a-z0-9]+)*$', maxLength: 60 },
		title: text,
		lang: { enum: ['en', 'es'] },
		demo: { type: 'boolean' },
		family: oneOf(FAMILIES),
		parts: { enum: [1, 2] },
		basis: { enum: ['volume', 'weight', null] },
		thinner: oneOfOrNull(THINNERS),
		cup: oneOfOrNull(CUPS),
		rubSolvent: { oneOf: [text, { type: 'null' }] },
		hazards: { type: 'array', uniqueItems: true, items: oneOf(HAZARDS) },
		filled: { type: 'boolean' },
		lines: closed(Object.fromEntries(lineIds.map((id) => [id, line(id)])), [...REQUIRED_LINES])
	}),
	$defs: {
		provenance: closed(
			{
				origin: { const: 'data-sheet' },
				verification: { oneOf: [{ const: 'memory' }, closed({ read: text })] },
				source: oneOf(SOURCES),
				where: text
			},
			['origin', 'verification']
		)
	}
});

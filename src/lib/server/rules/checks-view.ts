import { FORMULAS, SHOP_VALUES, type FormulaNote, type Shop, type ShopValueId } from '$lib/engine';
import { format, rules, say } from '$lib/i18n';
import { provenanceView, type Reader } from '$lib/paper';
import table from './checks.json';

type Line = (typeof table.computations)[number];
type Subject = keyof (typeof rules)['en']['subjects'];

const NOTES: ReadonlyMap<string, FormulaNote> = new Map(FORMULAS.map((formula) => [formula.id, formula]));

const valueText = (value: number | string | boolean, reader: Reader) =>
	typeof value === 'number' ? format.number(value, reader.lang, { atMost: 6 }) : String(value);

function worstView({ worst }: Line, reader: Reader) {
	if (!worst) return undefined;
	const { where, expected, got, unit, share } = worst;
	return {
		where,
		expected: `${valueText(expected, reader)} ${unit}`.trim(),
		got: `${valueText(got, reader)} ${unit}`.trim(),
		share: rules[reader.lang].ofAllowed(share)
	};
}

function computation(line: Line, reader: Reader) {
	const note = NOTES.get(line.of);
	const { facts, fromMemory, sources } = line;
	return {
		id: line.of,
		title: note ? say(note.title, reader.lang) : rules[reader.lang].subjects[line.of as Subject],
		...(note ? { equation: note.equation, provenance: provenanceView(note.source) } : {}),
		facts,
		fromMemory,
		sources,
		worst: worstView(line, reader)
	};
}

const fromMemory = (id: ShopValueId, shop: Shop) =>
	!shop.settings[id] && SHOP_VALUES[id].provenance.verification === 'memory';

/**
 * How each computation of the engine was held against something published: the table that the project's checks wrote
 * when they last ran, and the shop values that nobody has looked up or set.
 */
export const checksView = (shop: Shop, reader: Reader) => ({
	facts: table.facts,
	sources: table.sources,
	computations: table.computations.map((line) => computation(line, reader)),
	unchecked: (Object.keys(SHOP_VALUES) as ShopValueId[])
		.filter((id) => fromMemory(id, shop))
		.map((id) => ({ id, label: say(SHOP_VALUES[id].label, reader.lang) }))
});

import { formulaById, type Shop, type Traced } from '$lib/engine';
import { say } from '$lib/i18n';
import { provenanceView, quantityText, windowText, type Reader } from '$lib/paper';
import type { SumRow, SumStep, SumView } from './lesson-view';
import type { LessonSum } from './sum';

/** A share of the air below this is read in parts per million. */
const THIN = 0.005;
const inPpm = ({ lang, units }: Reader): Reader => ({
	lang,
	units: { ...units, own: { ...units.own, fraction: 'ppm' } }
});

const isComputed = ({ inputs }: Traced) => Object.keys(inputs).length > 0;

/** Every number that was worked out, each after those it needs and only once. */
function worked(results: readonly Traced[], known = new Set<Traced>()): readonly Traced[] {
	for (const one of results) {
		worked(Object.values(one.inputs).filter(isComputed), known);
		known.add(one);
	}
	return [...known];
}

function grouped<T>(all: readonly T[], by: (one: T) => unknown): readonly (readonly T[])[] {
	const groups = new Map<unknown, T[]>();
	for (const one of all) groups.set(by(one), [...(groups.get(by(one)) ?? []), one]);
	return [...groups.values()];
}

/** What a given number goes by, however often a sum looks it up. */
const key = (one: Traced): unknown =>
	one.origin.kind === 'shop-value' ? `${one.origin.id} ${one.value}` : one;

const sourceOf = ({ origin, provenance }: Traced) => provenanceView(provenance, origin.kind === 'shop-value');

/** Numbers of one label stand in one row, as the readings of a spot do. */
const rows = (numbers: readonly Traced[], reader: Reader, inAir?: boolean): readonly SumRow[] =>
	grouped(numbers, ({ label }) => label).map((alike) => {
		const [first] = alike as readonly [Traced, ...Traced[]];
		const values = alike.map(({ value, dimension }) =>
			quantityText(value, dimension, inAir && value < THIN ? inPpm(reader) : reader)
		);
		return {
			label: say(first.label, reader.lang),
			value: values.join(', '),
			...(first.provenance.origin === 'example' ? {} : { provenance: sourceOf(first) })
		};
	});

/** Within what the formulas take each number: the tightest of the limits it meets. */
function holds(all: readonly Traced[], reader: Reader): SumView['holds'] {
	const uses = all.flatMap(({ origin, inputs }) => {
		if (origin.kind !== 'formula') return [];
		const { validFor } = formulaById(origin.id);
		// a list comes in as name.0, name.1 …
		return Object.entries(inputs).map(([path, { label, dimension }]) => {
			const [min, max] = validFor[path.split('.')[0]!]!;
			return { label: say(label, reader.lang), dimension, min, max };
		});
	});
	return grouped(uses, ({ label }) => label).map((same) => {
		const [min, max] = [Math.max(...same.map(({ min }) => min)), Math.min(...same.map(({ max }) => max))];
		return { label: same[0]!.label, window: windowText({ min, max }, same[0]!.dimension, reader) };
	});
}

/** A sum of a lesson as it is written out for a reader in this shop: each number and each formula once. */
export function sumView({ id, asks, work, inAir, so }: LessonSum, shop: Shop, reader: Reader): SumView {
	const all = worked([work(shop)].flat());
	const shown = new Set<unknown>();
	const known = new Set<string>();
	const steps = all.map((one): SumStep => {
		const inputs = Object.values(one.inputs);
		const fresh = inputs.filter((input) => !shown.has(key(input)));
		for (const input of [...fresh, one]) shown.add(key(input));
		const { label, value, provenance } = rows([one], reader, inAir)[0]!;
		const step = { given: rows(fresh, reader, inAir), asAbove: fresh.length < inputs.length };
		if (one.origin.kind !== 'formula') return { ...step, result: { label, value, provenance } };
		if (known.has(one.origin.id)) return { ...step, result: { label, value } };
		known.add(one.origin.id);
		const { equation } = formulaById(one.origin.id);
		return { ...step, equation, result: { label, value, provenance } };
	});
	const written = { id, asks: say(asks, reader.lang), steps, holds: holds(all, reader) };
	return so ? { ...written, so: say(so(), reader.lang) } : written;
}

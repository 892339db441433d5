import { parseQuantity, type Dimension, type QuantityProblem } from '$lib/engine';
import type { Lang } from '$lib/i18n';

const MOST_VALUES = 20;

export type ReadValues =
	| { readonly ok: true; readonly values: readonly number[] }
	| { readonly ok: false; readonly problem: QuantityProblem };

/**
 * Reads several readings typed into one line, parted by semicolons: `18; 19; 21 µm`. A unit typed once holds for the
 * whole line; without any, the one printed beside the line does, if there is one. Values in SI; an empty line has none.
 */
export function readValues(
	typed: string,
	dimension: Dimension,
	{ lang, fallbackUnit }: { readonly lang: Lang; readonly fallbackUnit?: string }
): ReadValues {
	const parts = typed
		.split(/[;\n]/)
		.map((part) => part.trim())
		.filter(Boolean)
		.slice(0, MOST_VALUES);
	const alone = parts.map((part) => parseQuantity(part, dimension, { lang }));
	const unit = alone.find((each) => each.ok)?.unit ?? fallbackUnit;
	const values: number[] = [];
	for (const [at, part] of parts.entries()) {
		const first = alone[at]!;
		const read =
			!first.ok && first.problem.code === 'missing-unit' && unit !== undefined
				? parseQuantity(part, dimension, { lang, fallbackUnit: unit })
				: first;
		if (!read.ok) return { ok: false, problem: read.problem };
		values.push(read.value);
	}
	return { ok: true, values };
}

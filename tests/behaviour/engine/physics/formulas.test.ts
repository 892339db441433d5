import { describe, expect, it } from 'vitest';
import type { Formula } from '../../../../src/lib/engine/physics/formula';
import { FORMULAS } from '../../../../src/lib/engine/physics/formulas';
import { SOURCES } from '../../../../src/lib/engine/sources/sources';
import type { Dimension } from '../../../../src/lib/engine/units/dimension';

type AnyFormula = Formula<Record<string, Dimension>, Dimension>;

const modules = import.meta.glob<Record<string, unknown>>('../../../../src/lib/engine/physics/**/*.ts', {
	eager: true
});

const isFormula = (value: unknown): value is AnyFormula =>
	typeof value === 'object' && value !== null && 'validFor' in value && 'at' in value;

/** Formulas a module exports, alone or in records of records. */
const within = (value: unknown): AnyFormula[] =>
	isFormula(value)
		? [value]
		: typeof value === 'object' && value !== null && !Array.isArray(value)
			? Object.values(value).flatMap(within)
			: [];

const formulas = Object.entries(modules)
	.filter(([path]) => !/\/(formulas|index)\.ts$/.test(path))
	.flatMap(([, module]) => Object.values(module).flatMap(within));

const middle = ({ validFor }: AnyFormula) =>
	Object.fromEntries(Object.entries(validFor).map(([name, [low, high]]) => [name, (low + high) / 2]));

it('lists every formula there is, once', () => {
	expect(FORMULAS.map(({ id }) => id).sort()).toEqual(formulas.map(({ id }) => id).sort());
	expect(new Set(FORMULAS.map(({ id }) => id)).size).toBe(FORMULAS.length);
	expect(FORMULAS.length).toBeGreaterThanOrEqual(40);
});

describe.each(formulas.map((formula) => [formula.id, formula] as const))('%s', (_, formula) => {
	it('has a title in both languages, an equation, and a source', () => {
		expect(formula.title.en).not.toBe('');
		expect(formula.title.es).not.toBe(formula.title.en);
		expect(formula.equation).not.toBe('');
		const { origin, source, where } = formula.source;
		expect(where).toBeTruthy();
		if (origin !== 'arithmetic') expect(Object.keys(SOURCES)).toContain(source);
	});

	it('takes each input at the limits of its range', () => {
		for (const [name, range] of Object.entries(formula.validFor))
			for (const limit of range) {
				// what else is wrong with so extreme a case, or with the middle of everything, is said in other words
				const at = () => formula.at({ ...middle(formula), [name]: limit } as never);
				try {
					at();
				} catch (error) {
					expect(error).toBeInstanceOf(Error);
					expect((error as Error).message, `${name} = ${limit}`).not.toMatch(/ is outside .* \(SI\)$/);
				}
			}
	});

	it('refuses a number of another dimension, where it keeps a derivation', () => {
		if (!('of' in formula)) return;
		const given = Object.fromEntries(
			Object.entries(middle(formula)).map(([name, value]) => [name, { value, dimension: 'angle' }])
		);
		expect(() => formula.of(given as never)).toThrow(TypeError);
	});

	it('refuses each input outside its range, or no number at all', () => {
		for (const [name, [low, high]] of Object.entries(formula.validFor)) {
			const width = high - low;
			for (const wrong of [low - width / 100, high + width / 100, NaN, Infinity])
				expect(
					() => formula.at({ ...middle(formula), [name]: wrong } as never),
					`${name} = ${wrong}`
				).toThrow(new RegExp(`^${formula.id}: ${name} = .* is outside`));
		}
	});
});

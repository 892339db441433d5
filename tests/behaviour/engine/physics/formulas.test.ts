import { describe, expect, it } from 'vitest';
import type { Formula } from '../../../../src/lib/engine/physics/formula';
import { defineFormula } from '../../../../src/lib/engine/physics/formula';
import { formulaById } from '../../../../src/lib/engine/physics/formula-by-id';
import { FORMULAS } from '../../../../src/lib/engine/physics/formulas';
import { arithmetic } from '../../../../src/lib/engine/sources/provenance';
import { fraction } from '../../../../src/lib/engine/units/construct';
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

it('finds a formula by its id, and throws for one of another engine', () => {
	expect(formulaById('dew-point')).toBe(FORMULAS.find(({ id }) => id === 'dew-point'));
	expect(() => formulaById('phlogiston')).toThrow("no formula 'phlogiston'");
});

it('never hands on what is no number', () => {
	const broken = defineFormula({
		id: 'broken',
		title: { en: 'Broken', es: 'Roto' },
		equation: 'x/0',
		source: arithmetic('none'),
		inputs: { x: 'fraction' },
		gives: 'fraction',
		validFor: { x: [0, 1] },
		compute: ({ x }) => x / 0
	});
	expect(() => broken.at({ x: fraction(0) })).toThrow('broken: the result is not a number');
	expect(() => broken.at({ x: fraction(1) })).toThrow('broken: the result is not a number');
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

	it('says of each input what it measures and within what', () => {
		expect(Object.keys(formula.inputs).length).toBeGreaterThan(0);
		expect(Object.keys(formula.validFor).sort()).toEqual(Object.keys(formula.inputs).sort());
		for (const range of Object.values(formula.validFor)) {
			expect(range).toHaveLength(2);
			expect(range[0]).toBeLessThan(range[1]);
		}
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

import { describe, expect, it } from 'vitest';
import type { Dimension } from '../../../../src/lib/engine/units/dimension';
import { parseQuantity } from '../../../../src/lib/engine/units/parse';
import { problemText } from '../../../../src/lib/engine/units/problem-text';

const textOf = (typed: string, dimension: Dimension) => {
	const parsed = parseQuantity(typed, dimension);
	if (parsed.ok) throw new Error(`${typed} was read`);
	return problemText(parsed.problem);
};

describe('problemText', () => {
	it('says in both languages which units the field takes', () => {
		expect(textOf('85', 'pressure')).toEqual({
			en: 'Add the unit to “85”: bar, psi, kPa, MPa, or Pa.',
			es: 'Agregue la unidad a «85»: bar, psi, kPa, MPa o Pa.'
		});
	});

	it('says which ounces there are', () => {
		const { en, es } = textOf('2 oz', 'volume');
		expect(en).toContain('US fl oz, imp fl oz, or oz (weight)');
		expect(es).toContain('oz líq. EE. UU., oz líq. imp. u oz (peso)');
	});

	it('says what a strange unit measures', () => {
		expect(textOf('85 mm', 'pressure').en).toMatch(/“mm” measures length; this field takes pressure/);
		expect(textOf('85 mm', 'pressure').es).toMatch(/«mm» mide longitud; este campo pide presión/);
	});

	it.each<[string, Dimension]>([
		['', 'pressure'],
		['', 'spreading-rate'],
		['abc', 'count'],
		['1,200 g', 'mass'],
		['80-100 psi', 'pressure'],
		['9', 'ratio'],
		['x:1', 'ratio'],
		['85 pis', 'pressure'],
		['1 gal', 'volume'],
		['-300 °C', 'temperature'],
		['-5 psi', 'pressure'],
		['2.5', 'count'],
		['99999999999 psi', 'pressure']
	])('has words of its own in each language for “%s” as %s', (typed, dimension) => {
		const { en, es } = textOf(typed, dimension);
		expect(en.length).toBeGreaterThan(20);
		expect(es.length).toBeGreaterThan(20);
		expect(es).not.toBe(en);
		expect(en + es).not.toMatch(/undefined|null|NaN|\[object/);
	});

	it('gives examples that the field would take', () => {
		for (const dimension of [
			'temperature',
			'temperature-difference',
			'pressure',
			'length',
			'area',
			'volume',
			'mass',
			'density',
			'duration',
			'speed',
			'fraction',
			'ratio',
			'count',
			'angle',
			'flow',
			'spreading-rate',
			'sound-level'
		] as const) {
			const example = /for example (.*)\.$/.exec(textOf('', dimension).en)?.[1] ?? '';
			expect(parseQuantity(example, dimension), `${dimension}: ${example}`).toMatchObject({ ok: true });
		}
	});
});

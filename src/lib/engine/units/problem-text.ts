import type { Text } from '../text';
import type { Dimension } from './dimension';
import { DIMENSION_NAMES } from './dimension-names';
import type { QuantityProblem } from './problem';
import { UNITS } from './units';

type Names = (lang: keyof Text) => readonly string[];

const anyOf = (names: Names, lang: keyof Text) =>
	new Intl.ListFormat(lang, { type: 'disjunction' }).format(names(lang));

const bothOf = (word: (lang: keyof Text) => string): Text => ({ en: word('en'), es: word('es') });

/** What the field takes: its units, as a reader of each language sees them. */
const allowed = (dimension: Dimension): Text => {
	if (dimension === 'count')
		return { en: 'a whole number without a unit', es: 'un número entero sin unidad' };
	if (dimension === 'ratio') return { en: 'a ratio such as 9:1', es: 'una relación como 9:1' };
	return bothOf((lang) => anyOf((one) => UNITS[dimension].map((unit) => unit.label[one]), lang));
};

const choices = (dimension: Dimension, ids: readonly string[]): Text =>
	bothOf((lang) =>
		anyOf(
			(one) =>
				ids.map(
					(id) =>
						[...UNITS[dimension], ...UNITS.volume, ...UNITS.mass].find((unit) => unit.id === id)?.label[
							one
						] ?? id
				),
			lang
		)
	);

const EXAMPLES: Readonly<Partial<Record<Dimension, string>>> = {
	temperature: '150 °C',
	'temperature-difference': '3 °C',
	pressure: '85 psi',
	length: '25 µm',
	area: '12 ft²',
	volume: '500 mL',
	mass: '480 g',
	density: '1.2 g/mL',
	duration: '1 h 15 min',
	speed: '0.5 m/s',
	fraction: '65 %',
	ratio: '9:1',
	count: '2',
	angle: '90°'
};

const example = (dimension: Dimension) => {
	const first = UNITS[dimension][0];
	return EXAMPLES[dimension] ?? `10 ${first ? first.id : ''}`.trim();
};

/** Says what is wrong with a typed quantity and what may be typed instead. */
export function problemText(problem: QuantityProblem): Text {
	const { dimension, typed } = problem;
	const such = example(dimension);
	const units = allowed(dimension);
	switch (problem.code) {
		case 'empty':
			return { en: `Write a value, for example ${such}.`, es: `Escriba un valor, por ejemplo ${such}.` };
		case 'not-a-number':
			return {
				en: `“${typed}” is not a value this field can read. Write it like ${such}.`,
				es: `«${typed}» no es un valor que este campo pueda leer. Escríbalo así: ${such}.`
			};
		case 'ambiguous-number':
			return {
				en: `“${typed}” could mean thousands or decimals. Write thousands without a separator (1200) or decimals with another number of digits (1.2).`,
				es: `«${typed}» puede ser miles o decimales. Escriba los miles sin separador (1200) o los decimales con otra cantidad de cifras (1.2).`
			};
		case 'more-than-one-number':
			return {
				en: `“${typed}” holds more than one number. Write one value, for example ${such}.`,
				es: `«${typed}» tiene más de un número. Escriba un solo valor, por ejemplo ${such}.`
			};
		case 'missing-unit':
			return dimension === 'ratio'
				? {
						en: `Write both parts of the ratio, for example ${such}.`,
						es: `Escriba las dos partes de la relación, por ejemplo ${such}.`
					}
				: {
						en: `Add the unit to “${typed}”: ${units.en}.`,
						es: `Agregue la unidad a «${typed}»: ${units.es}.`
					};
		case 'unknown-unit':
			return {
				en: `“${problem.unit}” is not a unit this field knows. It takes ${units.en}.`,
				es: `«${problem.unit}» no es una unidad que este campo conozca. Acepta ${units.es}.`
			};
		case 'wrong-dimension':
			return {
				en: `“${problem.unit}” measures ${DIMENSION_NAMES[problem.found].en}; this field takes ${DIMENSION_NAMES[dimension].en}: ${units.en}.`,
				es: `«${problem.unit}» mide ${DIMENSION_NAMES[problem.found].es}; este campo pide ${DIMENSION_NAMES[dimension].es}: ${units.es}.`
			};
		case 'ambiguous-ounce':
		case 'ambiguous-unit': {
			const say = choices(dimension, problem.choices);
			return {
				en: `“${problem.unit}” can mean ${say.en}, and they are not the same amount. Write which one.`,
				es: `«${problem.unit}» puede ser ${say.es}, y no son la misma cantidad. Escriba cuál.`
			};
		}
		case 'below-absolute-zero':
			return {
				en: `“${typed}” is below absolute zero (−273.15 °C, −459.67 °F).`,
				es: `«${typed}» está por debajo del cero absoluto (−273.15 °C, −459.67 °F).`
			};
		case 'negative':
			return {
				en: `“${typed}” is negative; this value cannot be below zero.`,
				es: `«${typed}» es negativo; este valor no puede ser menor que cero.`
			};
		case 'not-whole':
			return {
				en: `“${typed}” is not a whole number. Write one like ${such}.`,
				es: `«${typed}» no es un número entero. Escriba uno como ${such}.`
			};
		case 'too-large':
			return {
				en: `“${typed}” is larger than anything in a shop. Check the number and the unit.`,
				es: `«${typed}» es mayor que cualquier valor de un taller. Revise el número y la unidad.`
			};
	}
}

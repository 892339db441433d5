import type { Text } from '../text';
import type { Dimension } from './dimension';
import type { Unit } from './unit';
import { unitOf } from './units';

/**
 * Numbers the way the shop's gauges print them: a decimal point in both languages (Mexico, Central America, the
 * Caribbean and the United States), and nothing parting thousands, which half of the readers would take for decimals.
 */
const LOCALES = { en: 'en-US', es: 'es-419' } as const satisfies Record<keyof Text, string>;
const NO_BREAK = '\u00a0';
const MINUTE = 60;
const HOUR = 3600;

/** The number alone, in the unit, with no more decimals than an instrument in that unit can show. */
export function formatNumber(value: number, dimension: Dimension, unitId: string, lang: keyof Text): string {
	return shown(unitOf(dimension, unitId), value, lang);
}

function shown(unit: Unit, value: number, lang: keyof Text): string {
	const number = unit.fromSi(value);
	if (!Number.isFinite(number)) throw new RangeError(`cannot show ${value} in ${unit.id || 'a count'}`);
	const digits = new Intl.NumberFormat(LOCALES[lang], {
		maximumFractionDigits: decimalsOf(unit, number),
		useGrouping: false
	}).format(number);
	return digits === '-0' ? '0' : digits;
}

const decimalsOf = (unit: Unit, number: number) =>
	Math.abs(number) < 1 ? unit.decimalsBelowOne : unit.decimals;

/** SI value with its unit: `85 psi`, `9:1`, `1 h 15 min`. What this prints, `parseQuantity` reads back. */
export function format(value: number, dimension: Dimension, unitId: string, lang: keyof Text): string {
	const unit = unitOf(dimension, unitId);
	if (dimension === 'ratio') return formatRatio(unit, value, lang);
	if (unit.id === 'h' && value >= HOUR) return formatHours(value, lang);
	return withUnit(shown(unit, value, lang), unit, lang);
}

/** Half of the last digit shown in this unit near this value, as a difference in SI. */
export function halfStep(value: number, dimension: Dimension, unitId: string): number {
	const unit = unitOf(dimension, unitId);
	const step = 10 ** -decimalsOf(unit, unit.fromSi(value));
	return (unit.toSi(step) - unit.toSi(0)) / 2;
}

export type ShownWindow = {
	readonly min?: number;
	readonly max?: number;
	/** The limit itself is outside. */
	readonly open?: boolean;
};

/** Limits in SI: `80–100 psi`, `at most 100 psi`, `below 30 psi`. Infinite limits count as none. */
export function formatWindow(
	window: ShownWindow,
	dimension: Dimension,
	unitId: string,
	lang: keyof Text
): string {
	const of = (value: number) => format(value, dimension, unitId, lang);
	const { min = -Infinity, max = Infinity, open = false } = window;
	if (min === -Infinity && max === Infinity) return NO_LIMIT[lang];
	if (min === -Infinity) return `${(open ? BELOW : AT_MOST)[lang]} ${of(max)}`;
	if (max === Infinity) return `${(open ? ABOVE : AT_LEAST)[lang]} ${of(min)}`;
	if (of(min) === of(max)) return of(min);
	const unit = unitOf(dimension, unitId);
	const [low, high] = [shown(unit, min, lang), shown(unit, max, lang)];
	if (dimension === 'ratio' || (unit.id === 'h' && max >= HOUR)) return `${of(min)} – ${of(max)}`;
	const range = low.startsWith('-') ? `${low}${NO_BREAK}${TO[lang]}${NO_BREAK}${high}` : `${low}–${high}`;
	return withUnit(range, unit, lang);
}

const NO_LIMIT: Text = { en: 'no limit', es: 'sin límite' };
const AT_MOST: Text = { en: 'at most', es: 'como máximo' };
const AT_LEAST: Text = { en: 'at least', es: 'como mínimo' };
const BELOW: Text = { en: 'below', es: 'menos de' };
const ABOVE: Text = { en: 'above', es: 'más de' };
const TO: Text = { en: 'to', es: 'a' };

const withUnit = (number: string, unit: Unit, lang: keyof Text) =>
	unit.id === '' ? number : unit.id === '°' ? `${number}°` : `${number}${NO_BREAK}${unit.label[lang]}`;

const formatRatio = (unit: Unit, value: number, lang: keyof Text) =>
	value < 1 && value > 0 ? `1:${shown(unit, 1 / value, lang)}` : `${shown(unit, value, lang)}:1`;

function formatHours(value: number, lang: keyof Text) {
	const minutes = Math.round(value / MINUTE);
	const [hours, rest] = [Math.floor(minutes / 60), minutes % 60];
	const whole = withUnit(String(hours), unitOf('duration', 'h'), lang);
	return rest ? `${whole} ${withUnit(String(rest), unitOf('duration', 'min'), lang)}` : whole;
}

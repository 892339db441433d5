import { AMOUNT_UNITS } from './amount-units';
import * as c from './construct';
import type { Dimension } from './dimension';
import { GEOMETRY_UNITS } from './geometry-units';
import { PHYSICAL_UNITS } from './physical-units';
import { unitsOf, type Unit } from './unit';

const t = unitsOf('temperature');
const dt = unitsOf('temperature-difference');
const p = unitsOf('pressure');
const s = unitsOf('duration');
const v = unitsOf('speed');
const x = unitsOf('fraction');
const r = unitsOf('ratio');
const n = unitsOf('count');

const CELSIUS =
	'C, deg C, degree C, degrees C, celsius, degrees celsius, centigrade, grados C, grados celsius, grados centígrados, centígrados, oC';
const FAHRENHEIT =
	'F, deg F, degree F, degrees F, fahrenheit, degrees fahrenheit, grados F, grados fahrenheit, oF';
const KELVIN = 'kelvin, kelvins, deg K';

/** Every unit a number may be typed or shown in, by dimension; the first is the metric default. */
export const UNITS: Readonly<Record<Dimension, readonly Unit[]>> = {
	temperature: [
		t('°C', c.celsius, { decimals: 1, also: CELSIUS }),
		t('°F', c.fahrenheit, { decimals: 1, also: FAHRENHEIT }),
		t('K', c.kelvin, { decimals: 1, also: KELVIN })
	],
	'temperature-difference': [
		dt('°C', c.degrees, { decimals: 1, also: CELSIUS }),
		dt('°F', (value) => (value * 5) / 9, { decimals: 1, also: FAHRENHEIT }),
		dt('K', c.degrees, { decimals: 1, also: KELVIN })
	],
	pressure: [
		p('bar', c.bar, { decimals: 2, also: 'bars, bares, barg, bar(g)' }),
		p('psi', c.psi, { decimals: 1, also: 'psig, lbf/in2, lb/in2, lb/pulg2, pounds per square inch' }),
		p('kPa', (value) => value * 1e3, { decimals: 1, also: 'kilopascal, kilopascals, kilopascales' }),
		p('MPa', (value) => value * 1e6, {
			decimals: 2,
			belowOne: 3,
			also: 'megapascal, megapascals, megapascales'
		}),
		p('Pa', c.pascal, { decimals: 0, also: 'pascal, pascals, pascales' })
	],
	duration: [
		s('min', c.minutes, { decimals: 1, also: 'm, mins, minute, minutes, minuto, minutos' }),
		s('s', c.seconds, { decimals: 1, also: 'sec, secs, seg, segs, second, seconds, segundo, segundos' }),
		s('h', c.hours, { decimals: 2, also: 'hr, hrs, hs, hour, hours, hora, horas' }),
		s('d', c.days, { decimals: 2, also: 'day, days, día, días' })
	],
	speed: [
		v('m/s', c.metresPerSecond, {
			decimals: 2,
			also: 'mps, m/seg, metres per second, meters per second, metros por segundo'
		}),
		v('mm/s', (value) => value / 1e3, { decimals: 0, also: 'mm/seg' }),
		v('ft/min', c.feetPerMinute, { decimals: 0, also: 'fpm, feet per minute, pies/min, pies por minuto' }),
		v('in/s', (value) => value * 0.0254, { decimals: 1, also: 'ips, inches per second, pulg/s' })
	],
	fraction: [
		x('%', c.percent, { decimals: 1, belowOne: 2, also: 'percent, per cent, pct, por ciento, % RH, % HR' }),
		x('fraction', c.fraction, { es: 'fracción', decimals: 2, belowOne: 3, also: 'of 1, de 1' }),
		x('ppm', (value) => value / 1e6, { decimals: 0, also: 'parts per million, partes por millón' })
	],
	ratio: [r(':1', c.ratio, { decimals: 2, also: 'to 1, a 1' })],
	count: [
		n('', c.count, {
			decimals: 0,
			also: 'coat, coats, mano, manos, capa, capas, pass, passes, pasada, pasadas, part, parts, pieza, piezas, rub, rubs'
		})
	],
	...GEOMETRY_UNITS,
	...AMOUNT_UNITS,
	...PHYSICAL_UNITS
};

/** The unit of that id. An unknown id is a bug or unchecked data, so it throws. */
export function unitOf(dimension: Dimension, id: string): Unit {
	const unit = UNITS[dimension].find((candidate) => candidate.id === id);
	if (!unit)
		throw new RangeError(
			`${dimension} has no unit '${id}'; it has ${UNITS[dimension].map((one) => one.id).join(', ')}`
		);
	return unit;
}

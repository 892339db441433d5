import * as u from '../units/construct';
import type { Dimension } from '../units/dimension';
import { SHOP_VALUES, type ShopValueId } from './values';

type Bounds = readonly [low: number, high: number];

/** Where nothing narrower is said of a value. */
const OF_DIMENSION: Readonly<Partial<Record<Dimension, Bounds>>> = {
	temperature: [u.celsius(-10), u.celsius(600)],
	'temperature-difference': [0, u.degrees(100)],
	pressure: [u.bar(0.05), u.bar(10)],
	length: [u.micrometres(1), u.metres(1)],
	fraction: [0, u.percent(100)],
	ratio: [1, 100],
	count: [1, 20],
	duration: [0, u.days(7)],
	speed: [u.metresPerSecond(0.01), u.metresPerSecond(3)]
};

/** Shares that a formula divides by, and sizes of things at the bench. */
const OF_VALUE: Readonly<Partial<Record<ShopValueId, Bounds>>> = {
	'growth.tolerance': [0, u.percent(50)],
	'drying.temperature': [u.celsius(30), u.celsius(200)],
	'drying.time': [u.minutes(1), u.hours(48)],
	'bake-out.time': [u.minutes(1), u.hours(48)],
	'blast.nozzle-coefficient': [u.percent(50), u.percent(100)],
	'blast.duty': [u.percent(1), u.percent(100)],
	'blast.leak': [0, u.percent(60)],
	'blast.reserve': [0, u.percent(100)],
	'blast.stand-off': [u.millimetres(20), u.metres(1)],
	'profile.share-least': [u.percent(1), u.percent(100)],
	'profile.share-most': [u.percent(1), u.percent(100)],
	'profile.thinnest-film': [u.micrometres(1), u.micrometres(500)],
	'mix.hardener-tolerance': [u.percent(0.1), u.percent(50)],
	'mix.batch-reserve': [0, u.percent(300)],
	'mix.pot-life-share': [u.percent(1), u.percent(100)],
	'spray.transfer': [u.percent(5), u.percent(100)],
	'spray.air': [u.celsius(-10), u.celsius(60)],
	'spray.part': [u.celsius(-10), u.celsius(60)],
	'gun.distance': [u.millimetres(20), u.metres(1)],
	'gun.fan': [u.millimetres(10), u.metres(1)],
	'gun.fan-beyond': [0, u.percent(300)],
	'gun.overlap': [0, u.percent(90)],
	'film.wet-tolerance': [0, u.percent(50)],
	'cure.cool-to': [u.celsius(0), u.celsius(100)],
	'cure.heat-transfer': [2, 500],
	'cure.heat-up-tolerance': [0, u.percent(90)],
	'inspection.spot.rounding': [0, u.percent(20)],
	'practical.mask-line': [u.millimetres(0.01), u.millimetres(50)]
};

const LISTED_OR_NOT: Bounds = [0, 1];

/**
 * What can exist at all in a shop, SI and inclusive: catches a slipped digit or unit, and keeps every value inside the
 * valid range of the formulas it goes into. Says nothing about what is right, which is the shop's to decide.
 */
export function valueBounds(id: ShopValueId): Bounds {
	if (id.startsWith('gear.')) return LISTED_OR_NOT;
	const { dimension } = SHOP_VALUES[id];
	const bounds = OF_VALUE[id] ?? OF_DIMENSION[dimension];
	if (!bounds) throw new Error(`no bounds for the shop value '${id}' of ${dimension}`);
	return bounds;
}

import * as u from '../units/construct';
import type { LineId } from './lines';

type Bounds = readonly [low: number, high: number];

const CURE: Bounds = [u.celsius(15), u.celsius(600)];
const HOLD: Bounds = [u.minutes(1), u.hours(48)];
const RATIO: Bounds = [0.05, 200];
const DENSITY: Bounds = [u.gramsPerMillilitre(0.5), u.gramsPerMillilitre(5)];
const WAIT: Bounds = [0, u.days(7)];

/**
 * What can exist at all, per line, SI and inclusive: they catch a slipped digit or unit and keep every number a sheet
 * may hold inside the valid range of the formulas it goes into. They say nothing about what is right.
 */
export const LINE_BOUNDS: Readonly<Record<LineId, Bounds>> = {
	'dry-film': [u.micrometres(1), u.micrometres(500)],
	'volume-solids': [u.percent(2), u.percent(100)],
	coats: [1, 10],
	agitate: [0, u.hours(24)],
	'mix-ratio': RATIO,
	'mix-ratio-band': RATIO,
	'density-base': DENSITY,
	'density-hardener': DENSITY,
	stir: [0, u.hours(2)],
	induction: [0, u.hours(24)],
	'pot-life': [u.minutes(1), u.days(7)],
	'pot-life-at': [u.celsius(5), u.celsius(40)],
	thinner: [0, u.percent(100)],
	strainer: [u.micrometres(10), u.micrometres(1000)],
	viscosity: [u.seconds(1), u.seconds(600)],
	'air-temperature': [u.celsius(-10), u.celsius(60)],
	humidity: [0, u.percent(100)],
	'cap-pressure': [u.bar(0.05), u.bar(10)],
	distance: [u.millimetres(20), u.metres(1)],
	interval: WAIT,
	flash: WAIT,
	'cure-metal-temperature': CURE,
	'cure-metal-hold': HOLD,
	'cure-polymer-temperature': CURE,
	'cure-polymer-hold': HOLD,
	'cure-laminate-temperature': CURE,
	'cure-laminate-hold': HOLD,
	'solvent-rubs': [1, 1000],
	'adhesion-class': [0, 5],
	storage: [u.celsius(-30), u.celsius(60)],
	'fume-above': [u.celsius(50), u.celsius(800)],
	'solvent-share': [0, u.percent(100)]
};

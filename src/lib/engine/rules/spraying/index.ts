import type { Rule } from '../rule';
import airInWindow from './air-in-window';
import capPressure from './cap-pressure';
import cleanDryAir from './clean-dry-air';
import coatInterval from './coat-interval';
import fanWidth from './fan-width';
import goWhenClear from './go-when-clear';
import gunDistance from './gun-distance';
import gunSpeed from './gun-speed';
import humidityInWindow from './humidity-in-window';
import hvlpLimit from './hvlp-limit';
import lowestSurfaceTemperature from './lowest-surface-temperature';
import numberOfCoats from './number-of-coats';
import partNearShopTemperature from './part-near-shop-temperature';
import passOverlap from './pass-overlap';
import pressureAtTheCap from './pressure-at-the-cap';
import recessesFirstShowFaceLast from './recesses-first-show-face-last';
import surfaceAboveDewPoint from './surface-above-dew-point';
import wetFilmForDryFilm from './wet-film-for-dry-film';

/** In working order. */
export const sprayingRules: readonly Rule[] = [
	surfaceAboveDewPoint,
	lowestSurfaceTemperature,
	humidityInWindow,
	airInWindow,
	partNearShopTemperature,
	cleanDryAir,
	goWhenClear,
	pressureAtTheCap,
	capPressure,
	hvlpLimit,
	gunDistance,
	fanWidth,
	passOverlap,
	gunSpeed,
	numberOfCoats,
	wetFilmForDryFilm,
	coatInterval,
	recessesFirstShowFaceLast
];

import { cite, type Provenance } from '../../sources/provenance';
import { defineFormula } from '../formula';

const DIP_CUP = cite('astm-d4212', 'cup equations', {
	read: 'cup equations on a viscosity laboratory’s page'
});
const FORD = cite('astm-d1200', 'cup equations', { read: 'equations and ranges in an open-source library' });
const ISO = cite('iso-2431', 'annex, cup equations', {
	read: 'equations and ranges in an open-source library'
});
const WITHDRAWN = cite('din-53211', 'cup equation; withdrawn in 1996', {
	read: 'equation and range in an open-source library'
});

type Seconds = readonly [from: number, to: number];

const cup = (
	id: string,
	[en, es]: readonly [string, string],
	equation: string,
	source: Provenance,
	range: Seconds,
	compute: (t: number) => number
) =>
	defineFormula({
		id: `viscosity-${id}`,
		title: { en: `Viscosity from the time of ${en}`, es: `Viscosidad a partir del tiempo de ${es}` },
		equation: `ν = ${equation} (mm²/s, s)`,
		source,
		inputs: { time: 'duration' },
		gives: 'viscosity',
		validFor: { time: range },
		compute: ({ time }) => compute(time) / 1e6
	});

/** ν = K(t − c) */
const straight = (
	id: string,
	name: readonly [string, string],
	source: Provenance,
	range: Seconds,
	k: number,
	c: number
) => cup(id, name, c ? `${k}(t − ${c})` : `${k}t`, source, range, (t) => k * (t - c));
/** ν = A·t − B/t, which turns negative below the range of the cup. */
const curved = (
	id: string,
	name: readonly [string, string],
	source: Provenance,
	range: Seconds,
	a: number,
	b: number
) => cup(id, name, `${a}t − ${b}/t`, source, range, (t) => a * t - b / t);

const dip = (number: number, range: Seconds, k: number, c: number) =>
	straight(`dip-cup-${number}`, [`dip cup ${number}`, `copa de inmersión ${number}`], DIP_CUP, range, k, c);
const ford = (number: number, range: Seconds, k: number, c: number) =>
	straight(`ford-${number}`, [`Ford cup ${number}`, `copa Ford ${number}`], FORD, range, k, c);
const iso = (bore: number, a: number, b: number) =>
	curved(
		`iso-2431-${bore}mm`,
		[`ISO 2431 cup, ${bore} mm`, `copa ISO 2431 de ${bore} mm`],
		ISO,
		[30, 100],
		a,
		b
	);

/**
 * Kinematic viscosity of a Newtonian liquid from the time a flow cup takes (25 °C for ASTM cups, 23 °C for ISO). Each cup
 * holds in its own time range only, and times of two cups do not convert for a thixotropic coating.
 */
export const cupViscosity = {
	'dip-cup-1': dip(1, [35, 80], 1.1, 29),
	'dip-cup-2': dip(2, [20, 80], 3.5, 14),
	'dip-cup-3': dip(3, [20, 80], 11.7, 7.5),
	'dip-cup-4': dip(4, [20, 80], 14.8, 5),
	'dip-cup-5': dip(5, [20, 80], 23, 0),
	'ford-1': ford(1, [55, 100], 0.49, 35),
	'ford-2': ford(2, [40, 100], 1.44, 18),
	'ford-3': ford(3, [20, 100], 2.31, 6.58),
	'ford-4': ford(4, [20, 100], 3.85, 4.49),
	'ford-5': ford(5, [20, 100], 12.1, 2),
	'iso-2431-3mm': iso(3, 0.443, 200),
	'iso-2431-4mm': iso(4, 1.37, 200),
	'iso-2431-5mm': iso(5, 3.28, 220),
	'iso-2431-6mm': iso(6, 6.9, 570),
	/** Of a standard withdrawn in 1996: for old data sheets that still name it. */
	'din-53211-4mm-withdrawn': curved(
		'din-53211-4mm-withdrawn',
		['the withdrawn DIN 53211 cup, 4 mm', 'la copa DIN 53211 de 4 mm, norma retirada'],
		WITHDRAWN,
		[25, 150],
		4.57,
		452
	)
};

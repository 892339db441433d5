import { cite, type Provenance } from '../sources/provenance';
import { defineFormula } from './formula';

const DIP_CUP = cite('astm-d4212', 'cup equations', {
	read: 'cup equations on a viscosity laboratory’s page'
});
const FORD = cite('astm-d1200', 'cup equations', 'memory');
const ISO = cite('iso-2431', 'annex, cup equations', 'memory');

const cup = (
	id: string,
	equation: string,
	source: Provenance,
	range: [number, number],
	compute: (t: number) => number
) =>
	defineFormula({
		id: `viscosity-${id}`,
		title: { en: 'Viscosity from cup time', es: 'Viscosidad a partir del tiempo de copa' },
		equation: `ν = ${equation} (mm²/s, s)`,
		source,
		inputs: { time: 'duration' },
		gives: 'viscosity',
		validFor: { time: range },
		compute: ({ time }) => compute(time) / 1e6
	});

/**
 * Kinematic viscosity of a Newtonian liquid from the time a flow cup takes (25 °C for ASTM cups, 23 °C for ISO). Each cup
 * holds in its own time range only, and times of two cups do not convert for a thixotropic coating.
 */
export const cupViscosity = {
	'dip-cup-1': cup('dip-cup-1', '1.1(t − 29)', DIP_CUP, [35, 80], (t) => 1.1 * (t - 29)),
	'dip-cup-2': cup('dip-cup-2', '3.5(t − 14)', DIP_CUP, [20, 80], (t) => 3.5 * (t - 14)),
	'dip-cup-3': cup('dip-cup-3', '11.7(t − 7.5)', DIP_CUP, [20, 80], (t) => 11.7 * (t - 7.5)),
	'dip-cup-4': cup('dip-cup-4', '14.8(t − 5)', DIP_CUP, [20, 80], (t) => 14.8 * (t - 5)),
	'dip-cup-5': cup('dip-cup-5', '23t', DIP_CUP, [20, 80], (t) => 23 * t),
	'ford-3': cup('ford-3', '2.31(t − 6.58)', FORD, [20, 100], (t) => 2.31 * (t - 6.58)),
	'ford-4': cup('ford-4', '3.85(t − 4.49)', FORD, [20, 100], (t) => 3.85 * (t - 4.49)),
	'iso-2431-4mm': cup('iso-2431-4mm', '1.37t − 200/t', ISO, [30, 100], (t) => 1.37 * t - 200 / t)
};

import { unitsOf } from './unit';

const times = (factor: number) => (value: number) => value * factor;
const CUBIC_FOOT = 0.3048 ** 3;

/** Units that appear in derivations more often than on a ticket. */
export const PHYSICAL_UNITS = {
	angle: [
		unitsOf('angle')('°', times(Math.PI / 180), { decimals: 0, also: 'degree, degrees, grado, grados' }),
		unitsOf('angle')('rad', times(1), { decimals: 2, also: 'radian, radians, radianes' })
	],
	flow: [
		unitsOf('flow')('m³/h', times(1 / 3600), { decimals: 1 }),
		unitsOf('flow')('L/min', times(1e-3 / 60), { decimals: 1, also: 'lpm' }),
		unitsOf('flow')('mL/min', times(1e-6 / 60), { decimals: 0, also: 'cc/min' }),
		unitsOf('flow')('cfm', times(CUBIC_FOOT / 60), {
			decimals: 1,
			also: 'ft3/min, cubic feet per minute, pcm'
		})
	],
	viscosity: [unitsOf('viscosity')('mm²/s', times(1e-6), { decimals: 1, also: 'cSt, centistokes' })],
	'spreading-rate': [
		unitsOf('spreading-rate')('m²/L', times(1e3), { decimals: 1 }),
		unitsOf('spreading-rate')('ft²/US gal', times(0.3048 ** 2 / 3.785411784e-3), {
			es: 'pies²/gal EE. UU.',
			decimals: 0
		})
	],
	'specific-heat': [unitsOf('specific-heat')('J/(kg·K)', times(1), { decimals: 0 })],
	conductivity: [unitsOf('conductivity')('W/(m·K)', times(1), { decimals: 1, belowOne: 2 })],
	'heat-transfer': [unitsOf('heat-transfer')('W/(m²·K)', times(1), { decimals: 1 })],
	'molar-mass': [unitsOf('molar-mass')('g/mol', times(1e-3), { decimals: 2 })],
	'molar-energy': [unitsOf('molar-energy')('kJ/mol', times(1e3), { decimals: 1 })],
	'sound-level': [unitsOf('sound-level')('dB(A)', times(1), { decimals: 1, also: 'dBA, dB' })],
	'sound-level-c': [unitsOf('sound-level-c')('dB(C)', times(1), { decimals: 1, also: 'dBC' })],
	'mass-flow': [
		unitsOf('mass-flow')('g/s', times(1e-3), { decimals: 1 }),
		unitsOf('mass-flow')('lb/s', times(0.45359237), { decimals: 2, belowOne: 4 })
	],
	power: [
		unitsOf('power')('kW', times(1e3), { decimals: 1 }),
		unitsOf('power')('hp', times(550 * 0.3048 * 0.45359237 * 9.80665), { decimals: 1 })
	],
	diffusivity: [unitsOf('diffusivity')('mm²/s', times(1e-6), { decimals: 2 })]
} as const;

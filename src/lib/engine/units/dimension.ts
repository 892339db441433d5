/**
 * What can be measured here, with the SI unit every number inside the engine is in.
 * A temperature is a point on the scale; a temperature difference is a distance on it, and the two never mix.
 */
export const SI_UNITS = {
	temperature: 'K',
	'temperature-difference': 'K',
	pressure: 'Pa',
	length: 'm',
	area: 'm²',
	volume: 'm³',
	mass: 'kg',
	density: 'kg/m³',
	duration: 's',
	speed: 'm/s',
	fraction: '1',
	ratio: ':1',
	count: '',
	angle: 'rad',
	flow: 'm³/s',
	viscosity: 'm²/s',
	'spreading-rate': 'm²/m³',
	'specific-heat': 'J/(kg·K)',
	conductivity: 'W/(m·K)',
	'heat-transfer': 'W/(m²·K)',
	'molar-mass': 'kg/mol',
	'molar-energy': 'J/mol',
	'sound-level': 'dB(A)',
	'sound-level-c': 'dB(C)',
	'mass-flow': 'kg/s',
	power: 'W',
	diffusivity: 'm²/s'
} as const;

export type Dimension = keyof typeof SI_UNITS;

declare const dimension: unique symbol;
/** A plain number that knows, at compile time only, which quantity it is and that it is in SI. */
export type Si<D extends Dimension = Dimension> = number & { readonly [dimension]: D };

export type Kelvin = Si<'temperature'>;
export type KelvinDifference = Si<'temperature-difference'>;
export type Pascal = Si<'pressure'>;
export type Metre = Si<'length'>;
export type SquareMetre = Si<'area'>;
export type CubicMetre = Si<'volume'>;
export type Kilogram = Si<'mass'>;
export type KilogramPerCubicMetre = Si<'density'>;
export type Second = Si<'duration'>;
export type MetrePerSecond = Si<'speed'>;
export type Fraction = Si<'fraction'>;
/** Parts of the first component to one part of the second. */
export type Ratio = Si<'ratio'>;
export type Count = Si<'count'>;
export type Radian = Si<'angle'>;
export type CubicMetrePerSecond = Si<'flow'>;
/** Kinematic viscosity; 1 mm²/s is 1 cSt. */
export type SquareMetrePerSecond = Si<'viscosity'>;
/** Area covered by a volume of coating. */
export type SpreadingRate = Si<'spreading-rate'>;
export type SpecificHeat = Si<'specific-heat'>;
export type Conductivity = Si<'conductivity'>;
export type HeatTransfer = Si<'heat-transfer'>;
export type MolarMass = Si<'molar-mass'>;
export type MolarEnergy = Si<'molar-energy'>;
/** A-weighted sound level in decibels: already a logarithm, so it is never scaled. */
export type SoundLevel = Si<'sound-level'>;
/** C-weighted, which low notes weigh more in; never to be read as an A-weighted level. */
export type SoundLevelC = Si<'sound-level-c'>;
export type KilogramPerSecond = Si<'mass-flow'>;
export type Watt = Si<'power'>;
/** Of heat: conductivity over density and specific heat. */
export type Diffusivity = Si<'diffusivity'>;

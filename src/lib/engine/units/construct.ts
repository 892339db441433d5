import type {
	Count,
	CubicMetre,
	CubicMetrePerSecond,
	Fraction,
	HeatTransfer,
	Kelvin,
	KelvinDifference,
	Kilogram,
	KilogramPerCubicMetre,
	Metre,
	MetrePerSecond,
	MolarEnergy,
	MolarMass,
	Pascal,
	Ratio,
	Second,
	Si,
	SoundLevel,
	SpecificHeat,
	SquareMetre
} from './dimension';

/*
 * The only places where a number in a shop unit becomes SI in code. Factors are exact by definition
 * (inch 25.4 mm, pound 0.45359237 kg, g 9.80665 m/s², US gallon 231 in³); psi = lbf/in² to 13 digits.
 */
export const PASCAL_PER_PSI = 6894.757293168;
export const LITRE_PER_US_GALLON = 3.785411784;
export const LITRE_PER_IMPERIAL_GALLON = 4.54609;

export const kelvin = (value: number) => value as Kelvin;
export const celsius = (value: number) => (value + 273.15) as Kelvin;
export const fahrenheit = (value: number) => (((value - 32) * 5) / 9 + 273.15) as Kelvin;
/** A difference of so many kelvins, which is the same number of degrees Celsius. */
export const degrees = (value: number) => value as KelvinDifference;
export const pascal = (value: number) => value as Pascal;
export const bar = (value: number) => (value * 1e5) as Pascal;
export const psi = (value: number) => (value * PASCAL_PER_PSI) as Pascal;
export const metres = (value: number) => value as Metre;
export const millimetres = (value: number) => (value / 1e3) as Metre;
export const micrometres = (value: number) => (value / 1e6) as Metre;
export const mils = (value: number) => (value * 25.4e-6) as Metre;
export const squareMetres = (value: number) => value as SquareMetre;
export const cubicMetres = (value: number) => value as CubicMetre;
export const litres = (value: number) => (value / 1e3) as CubicMetre;
export const millilitres = (value: number) => (value / 1e6) as CubicMetre;
/** Air of compressors and tools, as their plates give it. */
export const cubicMetresPerHour = (value: number) => (value / 3600) as CubicMetrePerSecond;
export const kilograms = (value: number) => value as Kilogram;
export const grams = (value: number) => (value / 1e3) as Kilogram;
/** Density in g/mL, as data sheets print it. */
export const gramsPerMillilitre = (value: number) => (value * 1e3) as KilogramPerCubicMetre;
export const seconds = (value: number) => value as Second;
export const minutes = (value: number) => (value * 60) as Second;
export const hours = (value: number) => (value * 3600) as Second;
export const days = (value: number) => (value * 86_400) as Second;
export const metresPerSecond = (value: number) => value as MetrePerSecond;
export const feetPerMinute = (value: number) => (value * 0.00508) as MetrePerSecond;
export const millilitresPerMinute = (value: number) => (value / 6e7) as CubicMetrePerSecond;
export const gramsPerMole = (value: number) => (value / 1e3) as MolarMass;
export const kilojoulesPerMole = (value: number) => (value * 1e3) as MolarEnergy;
export const joulesPerKilogramKelvin = (value: number) => value as SpecificHeat;
export const wattsPerSquareMetreKelvin = (value: number) => value as HeatTransfer;
export const decibels = (value: number) => value as SoundLevel;
export const fraction = (value: number) => value as Fraction;
export const percent = (value: number) => (value / 100) as Fraction;
export const ratio = (value: number) => value as Ratio;
export const count = (value: number) => value as Count;
/** For numbers whose quantity is only known at run time (tables of fields, data sheets). */
export const si = (value: number) => value as Si;

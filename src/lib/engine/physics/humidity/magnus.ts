const A = 17.62;
const B = 243.12;

/** Temperatures the Magnus constants over water were fitted for, K. */
export const MAGNUS_RANGE: [number, number] = [228.15, 333.15];

/** Natural logarithm of the saturation pressure of water over that at 0 °C: A·T/(B + T), T in °C. */
export function saturationExponent(temperature: number): number {
	const t = temperature - 273.15;
	return (A * t) / (B + t);
}

/** The temperature (K) that has this exponent: `saturationExponent` read backwards. */
export const temperatureOfExponent = (exponent: number): number => (B * exponent) / (A - exponent) + 273.15;

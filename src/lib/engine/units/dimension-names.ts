import type { Text } from '../text';
import type { Dimension } from './dimension';

/** What a dimension is called in a sentence. */
export const DIMENSION_NAMES: Readonly<Record<Dimension, Text>> = {
	temperature: { en: 'temperature', es: 'temperatura' },
	'temperature-difference': { en: 'a temperature difference', es: 'una diferencia de temperatura' },
	pressure: { en: 'pressure', es: 'presión' },
	length: { en: 'length', es: 'longitud' },
	area: { en: 'area', es: 'área' },
	volume: { en: 'volume', es: 'volumen' },
	mass: { en: 'weight', es: 'peso' },
	density: { en: 'density', es: 'densidad' },
	duration: { en: 'time', es: 'tiempo' },
	speed: { en: 'speed', es: 'velocidad' },
	fraction: { en: 'a share', es: 'una parte del total' },
	ratio: { en: 'a ratio', es: 'una relación' },
	count: { en: 'a whole number', es: 'un número entero' },
	angle: { en: 'an angle', es: 'un ángulo' },
	flow: { en: 'flow', es: 'caudal' },
	viscosity: { en: 'viscosity', es: 'viscosidad' },
	'spreading-rate': { en: 'coverage', es: 'rendimiento' },
	'specific-heat': { en: 'specific heat', es: 'calor específico' },
	conductivity: { en: 'heat conductivity', es: 'conductividad térmica' },
	'heat-transfer': { en: 'heat transfer', es: 'transferencia de calor' },
	'molar-mass': { en: 'molar mass', es: 'masa molar' },
	'molar-energy': { en: 'activation energy', es: 'energía de activación' },
	'sound-level': { en: 'sound level', es: 'nivel de ruido' },
	'sound-level-c': { en: 'C-weighted sound level', es: 'nivel de ruido con ponderación C' },
	'mass-flow': { en: 'mass flow', es: 'caudal másico' },
	power: { en: 'power', es: 'potencia' },
	diffusivity: { en: 'thermal diffusivity', es: 'difusividad térmica' }
};

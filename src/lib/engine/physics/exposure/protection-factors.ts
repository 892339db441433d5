import { cite } from '../../sources/provenance';
import type { Text } from '../../text';

export const PROTECTION_FACTORS_SOURCE = cite('osha-1910-134', '(d)(3)(i)(A), Table 1', {
	read: 'the table as quoted on public pages'
});

export const FACEPIECES = {
	quarter: { en: 'quarter mask', es: 'cuarto de máscara' },
	half: { en: 'half mask', es: 'media máscara' },
	full: { en: 'full facepiece', es: 'máscara completa' },
	hood: { en: 'helmet or hood', es: 'casco o capucha' },
	loose: { en: 'loose-fitting facepiece', es: 'pieza facial holgada' }
} as const satisfies Record<string, Text>;
export type Facepiece = keyof typeof FACEPIECES;

type Respirator = { readonly name: Text; readonly factors: Readonly<Partial<Record<Facepiece, number>>> };

/**
 * Assigned protection factors: how many times cleaner the air inside is than outside, for people who were fit-tested and
 * wear it under a full programme. A hood counts for 25; 1000 is for those whose maker shows test results for it. A blank
 * is no factor: that combination is not made or not for this use.
 */
export const PROTECTION_FACTORS = {
	'air-purifying': {
		name: { en: 'air-purifying', es: 'purificador de aire' },
		factors: { quarter: 5, half: 10, full: 50 }
	},
	powered: {
		name: { en: 'powered air-purifying', es: 'purificador de aire motorizado' },
		factors: { half: 50, full: 1000, hood: 25, loose: 25 }
	},
	'supplied-demand': {
		name: { en: 'supplied air, demand', es: 'con línea de aire, a demanda' },
		factors: { half: 10, full: 50 }
	},
	'supplied-continuous': {
		name: { en: 'supplied air, continuous flow', es: 'con línea de aire, flujo continuo' },
		factors: { half: 50, full: 1000, hood: 25, loose: 25 }
	},
	'supplied-pressure': {
		name: { en: 'supplied air, pressure demand', es: 'con línea de aire, presión positiva' },
		factors: { half: 50, full: 1000 }
	},
	'self-contained-demand': {
		name: { en: 'self-contained, demand', es: 'autónomo, a demanda' },
		factors: { half: 10, full: 50 }
	},
	'self-contained-pressure': {
		name: { en: 'self-contained, pressure demand', es: 'autónomo, presión positiva' },
		factors: { full: 10_000 }
	}
} as const satisfies Record<string, Respirator>;
export type RespiratorId = keyof typeof PROTECTION_FACTORS;

/** Every factor there is, small to large. */
export const FACTORS: readonly number[] = [
	...new Set(Object.values(PROTECTION_FACTORS).flatMap(({ factors }) => Object.values(factors)))
].sort((one, other) => one - other);

/** From the least factor to the greatest. */
export const PROTECTION: [number, number] = [FACTORS[0]!, FACTORS.at(-1)!];

import type { Text } from '../text';

/** Who outranks whom when two limits speak of the same thing, strongest first. */
export const AUTHORITIES = [
	'law',
	'safety-data-sheet',
	'part-limit',
	'customer',
	'data-sheet',
	'shop',
	'tool'
] as const;
export type Authority = (typeof AUTHORITIES)[number];

/** Limits of these kinds are never widened by anybody: they hold beside whatever else applies. */
export const HARD: readonly Authority[] = ['law', 'safety-data-sheet', 'part-limit'];

export const AUTHORITY_NAMES: Record<Authority, Text> = {
	law: { en: 'law and local code', es: 'ley y norma local' },
	'safety-data-sheet': { en: 'safety data sheet (SDS)', es: 'hoja de datos de seguridad (HDS)' },
	'part-limit': { en: 'physical limit of the part', es: 'límite físico de la pieza' },
	customer: { en: "customer's drawing", es: 'plano del cliente' },
	'data-sheet': { en: "the coating's data sheet", es: 'hoja técnica del recubrimiento' },
	shop: { en: 'shop values', es: 'valores del taller' },
	tool: { en: 'this tool', es: 'esta herramienta' }
};

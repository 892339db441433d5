import type { Text } from '../text';

/** Coating families by generic chemistry. */
export const FAMILIES = {
	A: { en: 'two-part, isocyanate-cured', es: 'de dos partes, curado con isocianato' },
	B: { en: 'two-part, amine-cured epoxy', es: 'de dos partes, epoxi curado con amina' },
	C: { en: 'one-part, heat-cured resin film', es: 'de una parte, película de resina curada al horno' },
	D: { en: 'one-part, high-bake', es: 'de una parte, horneado alto' },
	E: { en: 'one-part, air-cured thin film', es: 'de una parte, película delgada curada al aire' },
	F: { en: 'two-part, catalysed oven cure', es: 'de dos partes, catalizado con curado en horno' }
} as const satisfies Record<string, Text>;
export type Family = keyof typeof FAMILIES;

/** How many components a coating of the family is mixed from. */
export const FAMILY_PARTS: Readonly<Record<Family, 1 | 2>> = { A: 2, B: 2, C: 1, D: 1, E: 1, F: 2 };

export const THINNERS = {
	'ester-blend': { en: 'ester blend', es: 'mezcla de ésteres' },
	'glycol-ether': { en: 'glycol ether', es: 'éter de glicol' },
	'aromatic-blend': { en: 'aromatic blend', es: 'mezcla aromática' },
	alcohol: { en: 'alcohol', es: 'alcohol' },
	ketone: { en: 'ketone', es: 'cetona' }
} as const satisfies Record<string, Text>;
export type Thinner = keyof typeof THINNERS;

export const CUPS = {
	'iso-2431-4mm': { en: 'ISO 2431 cup, 4 mm', es: 'copa ISO 2431, 4 mm' },
	'dip-cup-2': { en: 'dip cup No. 2 (ASTM D4212)', es: 'copa de inmersión n.º 2 (ASTM D4212)' }
} as const satisfies Record<string, Text>;
export type Cup = keyof typeof CUPS;

export const HAZARDS = {
	flammable: { en: 'flammable liquid and vapour', es: 'líquido y vapor inflamables' },
	isocyanate: {
		en: 'isocyanate: can sensitise the airways for life',
		es: 'isocianato: puede sensibilizar las vías respiratorias de por vida'
	},
	'skin-sensitiser': { en: 'skin sensitiser', es: 'sensibilizante de la piel' },
	'solvent-vapour': { en: 'solvent vapour', es: 'vapor de solvente' },
	'decomposition-fume': { en: 'harmful fume when overheated', es: 'humo nocivo si se sobrecalienta' }
} as const satisfies Record<string, Text>;
export type Hazard = keyof typeof HAZARDS;

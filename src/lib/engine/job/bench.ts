import * as v from 'valibot';
import type { Text } from '../text';
import {
	dateSchema,
	durationSchema,
	keyOf,
	lengthSchema,
	pressureSchema,
	speedSchema,
	temperatureSchema,
	volumeSchema
} from './schema';

/** What is in the blast cabinet or on the shelf beside it. */
export const MEDIA = {
	'aluminium-oxide-fine': { en: 'aluminium oxide, 120–180 mesh', es: 'óxido de aluminio, malla 120–180' },
	'aluminium-oxide-coarse': { en: 'aluminium oxide, 60–80 mesh', es: 'óxido de aluminio, malla 60–80' },
	'glass-bead': { en: 'glass bead', es: 'microesfera de vidrio' },
	garnet: { en: 'garnet, 120 mesh', es: 'granate, malla 120' },
	'plastic-media': { en: 'plastic media', es: 'abrasivo plástico' },
	'steel-grit': { en: 'steel grit', es: 'granalla angular de acero' },
	'silica-sand': { en: 'silica sand', es: 'arena de sílice' }
} as const satisfies Record<string, Text>;
export type Medium = keyof typeof MEDIA;

export const BLOTTERS = {
	clean: { en: 'no stain', es: 'sin mancha' },
	'oil-ring': { en: 'faint oil ring', es: 'anillo tenue de aceite' },
	wet: { en: 'water drops', es: 'gotas de agua' },
	'not-done': { en: 'not done today', es: 'no se hizo hoy' }
} as const satisfies Record<string, Text>;

export const CABINETS = {
	sound: { en: 'sound', es: 'en buen estado' },
	'torn-seal': { en: 'door seal torn, window frosted', es: 'sello de puerta roto, mirilla opaca' }
} as const satisfies Record<string, Text>;

export const HARDENER_STATES = {
	clear: { en: 'clear, lid tight', es: 'transparente, tapa firme' },
	crystals: { en: 'crystals on the lid, can bulged', es: 'cristales en la tapa, lata abombada' }
} as const satisfies Record<string, Text>;

export const BREATHING = {
	'air-fed': {
		en: 'air-fed hood on tested breathing air',
		es: 'capucha con línea de aire respirable probado'
	},
	'half-mask': {
		en: 'half mask with organic-vapour and mist cartridges',
		es: 'media cara con cartuchos para vapor orgánico y neblina'
	},
	'dust-mask': { en: 'disposable dust mask', es: 'mascarilla desechable para polvo' }
} as const satisfies Record<string, Text>;
export type Breathing = keyof typeof BREATHING;

/** Coating on the shelf. */
export const shelfSchema = v.object({
	lot: v.string(),
	expires: dateSchema,
	hardenerExpires: v.nullable(dateSchema),
	hardenerState: v.nullable(keyOf(HARDENER_STATES)),
	/** Temperature of the store the can was fetched from. */
	stored: temperatureSchema(243.15, 333.15),
	/** How long it has stood at shop temperature since. */
	warming: durationSchema(0, 604_800),
	/** Left-over mix of an earlier job and its age; null where there is none. */
	leftOverAge: v.nullable(durationSchema(0, 172_800))
});

/** What the shop has for this job today. */
export const benchSchema = v.object({
	media: v.array(keyOf(MEDIA)),
	cabinet: keyOf(CABINETS),
	blotter: keyOf(BLOTTERS),
	/** Openings of the strainers in stock. */
	strainers: v.array(lengthSchema(10e-6, 1e-3)),
	/** Gun inlet pressure that gives a cap pressure, read with the test cap. */
	handlePressure: pressureSchema(0, 1e6),
	/** Unit the regulators are marked in. */
	gauge: v.picklist(['psi', 'bar']),
	/** Unit the oven shows. */
	ovenUnit: v.picklist(['°C', '°F']),
	ovenVolume: volumeSchema(0.05, 60),
	/** Most solvent per load on the oven's plate. */
	ovenSolventLimit: volumeSchema(1e-6, 0.05),
	boothSpeed: speedSchema(0, 3),
	breathing: v.array(keyOf(BREATHING)),
	/** Minutes a smoke test needs to clear this booth. */
	clearance: durationSchema(0, 7200)
});

/** The person at the gun, as far as equipment depends on it. No medical data beyond valid or not. */
export const wearerSchema = v.object({
	beard: v.boolean(),
	fitTestValid: v.boolean(),
	medicalClearanceValid: v.boolean()
});
export type Bench = v.InferOutput<typeof benchSchema>;
export type Shelf = v.InferOutput<typeof shelfSchema>;

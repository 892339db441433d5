import * as v from 'valibot';
import type { Text } from '../text';
import { millimetres } from '../units/construct';
import type { Metre } from '../units/dimension';
import {
	dateSchema,
	durationSchema,
	flowSchema,
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

/** Blast nozzles by the bore stamped on them, narrow to wide. */
export const NOZZLES = {
	'bore-3-2': { en: '3.2 mm (1/8 in)', es: '3.2 mm (1/8 pulg)' },
	'bore-4-8': { en: '4.8 mm (3/16 in)', es: '4.8 mm (3/16 pulg)' },
	'bore-6-4': { en: '6.4 mm (1/4 in)', es: '6.4 mm (1/4 pulg)' },
	'bore-7-9': { en: '7.9 mm (5/16 in)', es: '7.9 mm (5/16 pulg)' },
	'bore-9-5': { en: '9.5 mm (3/8 in)', es: '9.5 mm (3/8 pulg)' }
} as const satisfies Record<string, Text>;
export type Nozzle = keyof typeof NOZZLES;

const SIXTEENTH = 25.4 / 16;
/** Their bores: two to six sixteenths of an inch. */
export const NOZZLE_BORES: Readonly<Record<Nozzle, Metre>> = {
	'bore-3-2': millimetres(2 * SIXTEENTH),
	'bore-4-8': millimetres(3 * SIXTEENTH),
	'bore-6-4': millimetres(4 * SIXTEENTH),
	'bore-7-9': millimetres(5 * SIXTEENTH),
	'bore-9-5': millimetres(6 * SIXTEENTH)
};

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
	/** Free air that the compressor delivers, from its plate; not known of tickets written before it was asked for. */
	compressor: v.optional(flowSchema(1e-3, 1)),
	/** Blast nozzles on the shelf; not known of such tickets either. */
	nozzles: v.optional(v.array(keyOf(NOZZLES))),
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

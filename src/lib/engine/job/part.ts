import * as v from 'valibot';
import { SUBSTRATES, type SubstrateId } from '../substrates/substrates';
import type { Text } from '../text';
import { lengthSchema, massSchema, temperatureSchema, keyOf } from './schema';

/** Faces and holes that may have to stay bare. */
export const FEATURES = {
	thread: { en: 'threads', es: 'roscas' },
	'bearing-seat': { en: 'bearing seat', es: 'asiento de rodamiento' },
	'sealing-face': { en: 'sealing face', es: 'cara de sellado' },
	'ground-contact': { en: 'ground contact', es: 'contacto de tierra' },
	datum: { en: 'datum face', es: 'cara de referencia' }
} as const satisfies Record<string, Text>;
export type Feature = keyof typeof FEATURES;

/** Things still fitted in the part when it comes in. */
export const FITTED = {
	bearing: { en: 'greased bearing', es: 'rodamiento engrasado' },
	'rubber-seal': { en: 'rubber seal', es: 'sello de goma' },
	'bonded-abs-knob': { en: 'bonded ABS knob', es: 'perilla de ABS pegada' },
	magnet: { en: 'bonded magnet', es: 'imán pegado' }
} as const satisfies Record<string, Text>;
export type Fitted = keyof typeof FITTED;

/** What the surface is when it comes in. */
export const SURFACES = {
	bare: { en: 'bare', es: 'desnuda' },
	oily: { en: 'oily from machining', es: 'con aceite de mecanizado' },
	'old-coating': {
		en: 'coated by someone else, history unknown',
		es: 'recubierta por otros, historia desconocida'
	},
	'yellow-plating': { en: 'shiny yellow-gold plating', es: 'baño amarillo dorado brillante' }
} as const satisfies Record<string, Text>;
export type Surface = keyof typeof SURFACES;

export const CAVITIES = {
	none: { en: 'none', es: 'ninguna' },
	vented: { en: 'vented', es: 'con respiradero' },
	sealed: { en: 'closed, with a pinhole in the weld', es: 'cerrada, con un poro en la soldadura' }
} as const satisfies Record<string, Text>;
export type Cavity = keyof typeof CAVITIES;

export const SHAPES = {
	plate: { en: 'plate', es: 'placa' },
	tube: { en: 'tube', es: 'tubo' },
	bar: { en: 'round bar', es: 'barra redonda' },
	ring: { en: 'ring', es: 'anillo' },
	box: { en: 'open box', es: 'caja abierta' },
	bracket: { en: 'angle bracket', es: 'soporte en ángulo' }
} as const satisfies Record<string, Text>;
export type Shape = keyof typeof SHAPES;

export const partSchema = v.object({
	/** Invented name of the part, both languages. */
	name: v.object({ en: v.string(), es: v.string() }),
	count: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(5000)),
	/** What the customer's paper says; `unknown` where nobody has said. */
	material: v.union([keyOf(SUBSTRATES), v.literal('unknown')]),
	/** The magnet test at receiving; null where it was not done. */
	magnetSticks: v.nullable(v.boolean()),
	shape: keyOf(SHAPES),
	/** Outer sizes: plate length×width; tube, bar, ring outer diameter as width; bracket leg as height. */
	length: lengthSchema(0.005, 3),
	width: lengthSchema(0.003, 2),
	height: lengthSchema(0.0005, 2),
	/** Wall or plate thickness; for a bar its diameter. */
	thickness: lengthSchema(0.0003, 0.2),
	mass: massSchema(0.001, 200),
	porous: v.boolean(),
	cavity: keyOf(CAVITIES),
	features: v.array(keyOf(FEATURES)),
	/** Of `features`, those the customer's masking list names. */
	masked: v.array(keyOf(FEATURES)),
	fitted: v.array(keyOf(FITTED)),
	surface: keyOf(SURFACES),
	blindHole: v.boolean(),
	/** Tempering temperature of a hardened part, where the paper gives it. */
	tempered: v.nullable(temperatureSchema(373.15, 973.15)),
	/** Polymer straight from a humid shelf. */
	humidStore: v.boolean()
});

export type Part = v.InferOutput<typeof partSchema>;
export type Material = SubstrateId | 'unknown';
